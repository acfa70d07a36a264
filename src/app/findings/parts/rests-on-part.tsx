import styles from '@/app/findings/findings.module.css'
import type { FindingsSource } from '@/app/findings/findings-source.ts'
import type { FindingsAnswer } from '@/app/worker/findings-answer.ts'
import { namingOf } from '@/core/wording/findings/answer-of-rung.ts'
import { hangsSentence } from '@/core/wording/findings/hangs-sentence.ts'
import { restsOn } from '@/core/wording/findings/rests-on.ts'
import { rungFigures } from '@/core/wording/findings/rung-figures.ts'
import { boundUnits } from '@/core/wording/words/bound-units.ts'
import { Method } from './method.tsx'
import { PartFold } from './part-fold.tsx'

interface RestsOnPartProps {
  source: FindingsSource
  answer: FindingsAnswer
}

/** What the answer rests on, on whom it hangs, and how verdict, rungs and picture were worked out. */
export function RestsOnPart({ source, answer }: RestsOnPartProps) {
  const { findings, scores } = answer
  const [main] = findings.responses
  if (!main) return null
  const [first = '', ...others] = restsOn(scores, main, 0)
  return (
    <PartFold title="What it rests on" result={first}>
      <ul className={styles.plainList}>
        {[...others, hangsSentence(main.conclusion, source.nameOf)].filter(Boolean).map((line) => (
          <li key={line}>{boundUnits(line)}</li>
        ))}
      </ul>
      <Method
        what="the answer and its reach were"
        topics={['verdict', 'rungs', 'matter', 'residual']}
        figures={rungFigures(main, namingOf(findings, scores.responses[0]))}
      />
      <Method what="the picture was" topics={['means', 'levels', 'band']} />
    </PartFold>
  )
}
