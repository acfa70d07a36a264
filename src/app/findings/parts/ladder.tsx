import unseen from '@/app/kit/look/unseen.module.css'
import type { ResponseFindings } from '@/core/findings/response-findings-shape.ts'
import type { Naming } from '@/core/wording/findings/answer-of-rung.ts'
import { rungLines } from '@/core/wording/findings/rung-text.ts'
import { boundUnits } from '@/core/wording/words/bound-units.ts'
import three from './columns-of-three.module.css'
import styles from './ladder.module.css'

const marks = { full: 'answers', half: 'leans', hollow: 'open' }

interface LadderProps {
  found: ResponseFindings
  naming: Naming
}

/** The three rungs, lowest first: how far this evidence carries. */
export function Ladder({ found, naming }: LadderProps) {
  return (
    <ol className={three.three} aria-label="How far this carries">
      {rungLines(found, naming).map((line) => (
        <li key={line.rung} className={styles.rung}>
          <span className={`${styles.mark} ${styles[line.mark]}`} aria-hidden="true" />
          <div>
            <b>{line.title}:</b> {boundUnits(line.says)}{' '}
            <span className={unseen.unseen}>({marks[line.mark]})</span>
            <p className={styles.claim}>{line.claim}</p>
          </div>
        </li>
      ))}
    </ol>
  )
}
