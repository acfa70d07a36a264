import unseen from '@/app/kit/look/unseen.module.css'
import { Section } from '@/app/kit/page/section.tsx'
import type { ResponseFindings } from '@/core/findings/response-findings-shape.ts'
import type { Naming } from '@/core/wording/findings/answer-of-rung.ts'
import { rungFigures } from '@/core/wording/findings/rung-figures.ts'
import { rungLines } from '@/core/wording/findings/rung-text.ts'
import { boundUnits } from '@/core/wording/words/bound-units.ts'
import styles from './ladder.module.css'
import { Method } from './method.tsx'
import { partTitle } from './part-title.ts'

const marks = { full: 'answers', half: 'leans', hollow: 'open' }

interface LadderProps {
  found: ResponseFindings
  naming: Naming
  index: number
}

/** The three rungs as a ladder: how far this evidence carries, lowest first. */
export function Ladder({ found, naming, index }: LadderProps) {
  return (
    <Section title={partTitle('How far this carries', index, found.name)}>
      <ol className={styles.ladder}>
        {rungLines(found, naming).map((line) => (
          <li key={line.rung} className={styles.rung}>
            <span className={`${styles.mark} ${styles[line.mark]}`} aria-hidden="true" />
            <p>
              <b>{line.title}</b> <span className={styles.claim}>{line.claim}</span>
              <span className={styles.says}>
                {boundUnits(line.says)} <span className={unseen.unseen}>({marks[line.mark]})</span>
              </span>
            </p>
          </li>
        ))}
      </ol>
      <Method
        topics={['rungs', 'verdict', 'matter', 'residual']}
        figures={rungFigures(found, naming)}
      />
    </Section>
  )
}
