import { rovingKeys } from '@/app/kit/press/roving-keys.ts'
import styles from './covered-rail.module.css'

interface CoveredRailProps {
  /** Serving codes in an order that tells nothing, such as rising. */
  codes: readonly { id: string; code: string }[]
  current?: string | null | undefined
  onPick?: ((id: string) => void) | undefined
}

/** The rail while the tasting is sealed: serving codes in neutral ink, evenly spaced, no scale and no colour. */
export function CoveredRail({ codes, current, onPick }: CoveredRailProps) {
  const reachable = codes.some((each) => each.id === current) ? current : codes[0]?.id
  return (
    <nav
      className={styles.rail}
      aria-label="Servings, covered until the tasting is over"
      onKeyDown={
        onPick
          ? rovingKeys((index) => {
              const reached = codes[index]
              if (reached) onPick(reached.id)
            })
          : undefined
      }
    >
      <ol className={styles.codes}>
        {codes.map(({ id, code }) => (
          <li key={id}>
            {onPick ? (
              <button
                type="button"
                className={styles.code}
                tabIndex={id === reachable ? 0 : -1}
                aria-current={id === current ? 'true' : undefined}
                onClick={() => onPick(id)}
              >
                {code}
              </button>
            ) : (
              <span className={styles.code}>{code}</span>
            )}
          </li>
        ))}
      </ol>
      <p className={styles.foot}>Covered until the last ballot is in: codes only.</p>
    </nav>
  )
}
