import styles from '@/app/findings/findings.module.css'
import type { FindingsSource } from '@/app/findings/findings-source.ts'
import { Fold } from '@/app/kit/page/fold.tsx'
import { LateView } from '@/app/kit/page/late-view.tsx'
import { useCurrentLevel } from '@/app/kit/rail/current-level.ts'
import type { FindingsAnswer } from '@/app/worker/findings-answer.ts'
import { chartOfResponse, withDescribedMeans } from '@/core/figure/chart-of-response.ts'
import { alsoSeenSentence, lookedAt } from '@/core/wording/findings/also-seen.ts'
import { namingOf, shownRung } from '@/core/wording/findings/answer-of-rung.ts'
import { headline } from '@/core/wording/findings/headline.ts'
import { boundUnits } from '@/core/wording/words/bound-units.ts'
import { ChartFrame } from './chart-frame.tsx'
import { ChartWaiting } from './chart-waiting.tsx'
import { DirectionAndBest } from './direction-and-best.tsx'
import { Ladder } from './ladder.tsx'
import { smallMultiples } from './lazy-charts.ts'
import { LevelsTable } from './levels-table.tsx'
import { Method } from './method.tsx'
import { PairsPart } from './pairs-part.tsx'
import { PartFold } from './part-fold.tsx'
import { ResponsePart } from './response-part.tsx'
import { sayMean } from './say-mean.ts'
import { TasterPart } from './taster-part.tsx'
import { TooMuchPart } from './too-much-part.tsx'
import { WhenNear } from './when-near.tsx'

interface AlsoSeenProps {
  source: FindingsSource
  answer: FindingsAnswer
}

/** The other responses: all on one axis, a sentence each, and the whole of each behind a fold. */
export function AlsoSeen({ source, answer }: AlsoSeenProps) {
  const lit = useCurrentLevel((state) => state.levelId)
  const { scores, findings } = answer
  if (findings.responses.length < 2) return null
  const unit = findings.factor.unitOfMeasure
  const drawn = findings.responses.map((found, index) => ({
    id: found.id,
    name: found.name,
    chart: withDescribedMeans(chartOfResponse(scores, index, found, shownRung(found), null), found),
    say: (mean: Parameters<typeof sayMean>[0]) => sayMean(mean, unit),
  }))
  return (
    <PartFold title="Also seen" result={alsoSeenSentence(findings.responses)}>
      <div>
        <ChartFrame
          title="Everything recorded, on the rail’s axis"
          picture={
            <WhenNear heightPixels={drawn.length * 156}>
              <LateView
                part={smallMultiples}
                waiting={<ChartWaiting heightPixels={drawn.length * 156} />}
                props={{ multiples: drawn, lit }}
              />
            </WhenNear>
          }
          table={findings.responses.map((found, index) => (
            <div key={found.id} className={styles.tables}>
              <h3>{found.name}</h3>
              <LevelsTable answer={answer} index={index} />
            </div>
          ))}
        />
        <Method
          what="what else was seen was"
          topics={['means', 'levels', 'verdict', 'pairs', 'control', 'best']}
        />
      </div>
      <p>{lookedAt(findings.responses.length - 1)}</p>
      {findings.responses.slice(1).map((found, index) => (
        <Fold
          key={found.id}
          name={found.name}
          level={3}
          result={boundUnits(
            headline(found, namingOf(findings, scores.responses[index + 1])).shown,
          )}
        >
          <InFull source={source} answer={answer} index={index + 1} />
        </Fold>
      ))}
    </PartFold>
  )
}

interface InFullProps extends AlsoSeenProps {
  index: number
}

/** Another response as fully as the main one: chart, rungs, pairs, its own best, and every taster's curve. */
function InFull(props: InFullProps) {
  const { answer, index } = props
  const found = answer.findings.responses[index]
  if (!found) return null
  const naming = namingOf(answer.findings, answer.scores.responses[index])
  return (
    <div className={styles.part}>
      <ResponsePart {...props} />
      <Ladder found={found} naming={naming} />
      <div className={styles.folds}>
        <PairsPart {...props} />
        <DirectionAndBest {...props} />
        <TooMuchPart findings={answer.findings} index={index} />
        <TasterPart {...props} />
      </div>
    </div>
  )
}
