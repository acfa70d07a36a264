import { useState } from 'react'
import { Link } from 'wouter'
import { ForwardMark } from '@/app/kit/look/forward-mark.tsx'
import styles from './header.module.css'
import { type PlaceName, placeNames } from './place-names.ts'
import { useShutOutside } from './use-shut-outside.ts'

interface WaysOfTrialProps {
  trialId: string
  place: PlaceName
  /** The device lies at this trial's table: there is one way alone. */
  atTable: boolean
}

/** The way through the five places of a trial: in a row, and on a phone behind one press that names the place. */
export function WaysOfTrial({ trialId, place, atTable }: WaysOfTrialProps) {
  const [open, setOpen] = useState(false)
  const box = useShutOutside(open, () => setOpen(false))
  const shown = atTable ? [place] : placeNames
  return (
    <nav aria-label="Places of this trial" className={styles.places} ref={box}>
      {atTable ? null : (
        <button
          type="button"
          className={styles.placePress}
          aria-expanded={open}
          onClick={() => setOpen(!open)}
        >
          <span className={styles.unseen}>Place: </span>
          {place.title}
          <ForwardMark turned />
        </button>
      )}
      <div className={atTable ? '' : `${styles.row} ${open ? styles.open : ''}`}>
        {shown.map(({ name, title }) =>
          name === place.name && !atTable ? (
            <span key={name} className={styles.way} aria-current="page">
              {title}
            </span>
          ) : (
            <Link
              key={name}
              href={`/trial/${trialId}/${name}`}
              className={styles.way ?? ''}
              aria-current={name === place.name ? 'page' : undefined}
              onClick={() => setOpen(false)}
            >
              {title}
            </Link>
          ),
        )}
      </div>
    </nav>
  )
}
