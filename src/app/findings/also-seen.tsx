import { lazy, Suspense } from 'react'
import { Section } from '@/app/kit/section.tsx'
import type { FindingsAnswer } from '@/app/worker/findings-answer.ts'
import { chartOfResponse } from '@/core/figure/chart-of-response.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { alsoSeen } from '@/core/wording/also-seen.ts'
import { shownRung } from '@/core/wording/answer-of-rung.ts'
import { ChartFrame } from './chart-frame.tsx'
import { ChartWaiting } from './chart-waiting.tsx'
import styles from './findings.module.css'
import { Fold } from './fold.tsx'
import { LevelsTable } from './levels-table.tsx'
import { PairsPart } from './pairs-part.tsx'
import { ResponsePart } from './response-part.tsx'
import { sayMean } from './say-mean.ts'

const SmallMultiples = lazy(async () => ({
  default: (await import('@/app/charts/small-multiples.tsx')).SmallMultiples,
}))

interface AlsoSeenProps {
  whole: WholeTrial
  answer: FindingsAnswer
  letters: ReadonlyMap<string, string>
}

/** The other responses: all on one axis, a sentence each, and the whole of each behind a fold. */
export function AlsoSeen({ whole, answer, letters }: AlsoSeenProps) {
  const { scores, findings } = answer
  const unit = findings.factor.unitOfMeasure
  const naming = { factor: findings.factor, unit: findings.unit }
  const drawn = findings.responses.map((found, index) => ({
    name: found.name,
    chart: chartOfResponse(scores, index, found, shownRung(found), null),
    say: (mean: Parameters<typeof sayMean>[0]) => sayMean(mean, unit),
  }))
  return (
    <Section title="Also seen">
      <ChartFrame
        title="Everything recorded, on the rail’s axis"
        picture={
          <Suspense fallback={<ChartWaiting heightPixels={drawn.length * 150} />}>
            <SmallMultiples multiples={drawn} />
          </Suspense>
        }
        table={findings.responses.map((found, index) => (
          <LevelsTable key={found.name} answer={answer} index={index} />
        ))}
      />
      {findings.responses.slice(1).map((found, index) => (
        <div key={found.name} className={styles.stack}>
          <p>{alsoSeen(found, naming)}</p>
          <Fold title={`${found.name}, in full`}>
            <ResponsePart whole={whole} answer={answer} index={index + 1} />
            <PairsPart answer={answer} index={index + 1} letters={letters} />
          </Fold>
        </div>
      ))}
    </Section>
  )
}
