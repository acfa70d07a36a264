import styles from '@/app/bench/bench.module.css'
import { loggedText } from '@/app/bench/log/logged-text.ts'
import type { ToWeigh } from '@/core/session/press/to-weigh.ts'
import weigh from './weigh.module.css'

interface WeighedListProps {
  lines: readonly ToWeigh[]
  openKey: string | null
  onAgain: (key: string) => void
}

/** The dough's whole weigh sheet with what was logged beside it; a press weighs that line again. */
export function WeighedList({ lines, openKey, onAgain }: WeighedListProps) {
  return (
    <ul className={styles.lines}>
      {lines.map((line) => (
        <li key={line.key}>
          <button
            type="button"
            className={weigh.weighLine}
            disabled={line.loggedAs === null}
            aria-current={line.key === openKey}
            onClick={() => onAgain(line.key)}
          >
            <span>{line.name}</span>
            <span>{line.text}</span>
            <span className={styles.quiet}>
              {line.logged ? loggedText(line.logged.grams, line.grams) : ''}
            </span>
          </button>
        </li>
      ))}
    </ul>
  )
}
