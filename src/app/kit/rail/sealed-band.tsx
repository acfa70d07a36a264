import styles from './sealed-band.module.css'

interface SealedBandProps {
  /** Ballots that are in, and that are expected; null before the tasting has begun. */
  ballots: { in: number; expected: number } | null
}

/** In the rail's place while a tasting is sealed or about to be: neither level nor letter, only how far it has come. */
export function SealedBand({ ballots }: SealedBandProps) {
  return (
    <p className={styles.band}>
      <svg aria-hidden="true" width="14" height="18" viewBox="0 0 14 18" fill="currentColor">
        <path d="M0 7h14v11H0z" />
        <path d="M3 7V5a4 4 0 0 1 8 0v2" fill="none" stroke="currentColor" strokeWidth="2.2" />
      </svg>
      <b>{ballots ? 'Sealed' : 'Covered for the tasting'}</b>
      {ballots ? (
        <span className={styles.count}>
          {ballots.in} of {ballots.expected} ballots in
        </span>
      ) : null}
    </p>
  )
}
