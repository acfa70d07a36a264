import styles from '@/app/findings/findings.module.css'
import type { FindingsSource } from '@/app/findings/findings-source.ts'
import { Progress } from '@/app/kit/page/progress.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import type { FindingsAnswer } from '@/app/worker/findings-answer.ts'
import { useBootstrap } from '@/app/worker/use-bootstrap.ts'
import { whyNotRedrawn } from '@/core/findings/best/bootstrap-of-best.ts'
import { type Absent, isPresent } from '@/core/findings/reason.ts'
import type { Bootstrap } from '@/core/findings/response-findings-shape.ts'
import { namingOf, shownRung } from '@/core/wording/findings/answer-of-rung.ts'
import { asHandledSentence } from '@/core/wording/findings/as-handled-sentence.ts'
import { besideSentence } from '@/core/wording/findings/beside-sentence.ts'
import { bestFigures } from '@/core/wording/findings/best-figures.ts'
import { bootstrapSentence } from '@/core/wording/findings/bootstrap-sentence.ts'
import { spokenOf } from '@/core/wording/findings/headline.ts'
import { placeSentence } from '@/core/wording/findings/place-sentence.ts'
import { trendSentence } from '@/core/wording/findings/trend-sentence.ts'
import { boundUnits } from '@/core/wording/words/bound-units.ts'
import { Method } from './method.tsx'
import { PartFold } from './part-fold.tsx'

interface DirectionAndBestProps {
  source: FindingsSource
  answer: FindingsAnswer
  index: number
}

/** Where the best lies, by curve and by drawing again; what freshness and order had to do with it. */
export function DirectionAndBest({ source, answer, index }: DirectionAndBestProps) {
  const { scores, findings } = answer
  const found = findings.responses[index]
  const bootstrap = useBootstrap(scores, index, source.seed)
  if (!found) return null
  const rung = shownRung(found)
  const shown = rung === null ? null : found[rung]
  const valued = scores.responses[index]?.better.is !== 'neither'
  const best = valued && shown !== null && isPresent(shown) ? shown.best : null
  const naming = namingOf(findings, scores.responses[index])
  const spoken = spokenOf(found, naming)
  const levels = scores.levels.map(({ name }) => name)
  const of = { index, name: found.name }
  return (
    <>
      {findings.factor.ordered && shown !== null && isPresent(shown) ? (
        <PartFold title="Which way" result={trendSentence(shown.trend, found.name, naming)} {...of}>
          <Method what="the line was" topics={['trend']} />
        </PartFold>
      ) : null}
      {best === null ? null : (
        <PartFold
          title="Where the best lies"
          result={placeSentence(spoken, isPresent(best) ? best : null)}
          {...of}
        >
          <div className={styles.stack}>
            {isPresent(best) ? (
              <p>
                {boundUnits(
                  asHandledSentence(found.conclusion, best, levels, findings.factor.unitOfMeasure),
                )}
              </p>
            ) : null}
            {findings.factor.ordered && isPresent(best) ? (
              <Redrawn
                bootstrap={bootstrap}
                refused={whyNotRedrawn(scores, index)}
                say={(drawn) =>
                  boundUnits(bootstrapSentence(drawn, levels, findings.factor.unitOfMeasure))
                }
              />
            ) : null}
            <Method
              what="the best was"
              topics={['best', 'delta', 'lackOfFit', 'asHandled', 'bootstrap']}
              figures={bestFigures(best, levels, findings.factor.unitOfMeasure)}
            />
          </div>
        </PartFold>
      )}
      {isPresent(found.rows) ? (
        <PartFold
          title="Freshness and order"
          result={besideSentence(found.conclusion.freshness, 'freshness')}
          {...of}
        >
          <p>{boundUnits(besideSentence(found.conclusion.order, 'order'))}</p>
          <Method what="freshness and order were" topics={['freshness']} />
        </PartFold>
      ) : null}
    </>
  )
}

interface RedrawnProps {
  bootstrap: ReturnType<typeof useBootstrap>
  /** Known beforehand: then it is said and nothing is offered. */
  refused: Absent | null
  say: (answer: Bootstrap | Absent) => string
}

/** The best by drawing again: refused with its reason, asked for, under way with a way to stop, or answered. */
function Redrawn({ bootstrap: { state, start, stop }, refused, say }: RedrawnProps) {
  if (refused) return <p>{say(refused)}</p>
  switch (state.state) {
    case 'running':
      return <Progress label="Drawing again" done={state.done} onStop={stop} />
    case 'failed':
      return <p>Drawing again failed: {state.error.message}.</p>
    case 'answered':
      return <p>{say(state.answer)}</p>
    case 'idle':
      return (
        <Button kind="plain" size="small" onPress={start}>
          Draw again, 10,000 times
        </Button>
      )
  }
}
