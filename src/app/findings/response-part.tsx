import { lazy, Suspense, useState } from 'react'
import { levelFills } from '@/app/charts/level-fills.ts'
import { SelectField } from '@/app/kit/select-field.tsx'
import type { FindingsAnswer } from '@/app/worker/findings-answer.ts'
import { bestSpan } from '@/core/figure/best-span.ts'
import { axisLevels, chartOfResponse } from '@/core/figure/chart-of-response.ts'
import { isPresent } from '@/core/findings/reason.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { shownRung } from '@/core/wording/answer-of-rung.ts'
import { bestLabel } from '@/core/wording/best-label.ts'
import { chartAlt } from '@/core/wording/chart-alt.ts'
import { rungTitle } from '@/core/wording/rung-text.ts'
import { tasterName } from '@/core/wording/taster-name.ts'
import { ChartFrame } from './chart-frame.tsx'
import { ChartWaiting } from './chart-waiting.tsx'
import { LevelsTable } from './levels-table.tsx'
import { sayMean } from './say-mean.ts'

const ResponseChart = lazy(async () => ({
  default: (await import('@/app/charts/response-chart.tsx')).ResponseChart,
}))

interface ResponsePartProps {
  whole: WholeTrial
  answer: FindingsAnswer
  index: number
}

/** One response against the factor under the rail, all tasters or one, or the same as a table. */
export function ResponsePart({ whole, answer, index }: ResponsePartProps) {
  const [tasterId, setTasterId] = useState('')
  const { scores, findings, curves } = answer
  const found = findings.responses[index]
  if (!found) return null
  const rung = shownRung(found)
  const chart = chartOfResponse(scores, index, found, rung, curves[index] ?? null)
  const unit = findings.factor.unitOfMeasure
  const shown = rung === null ? null : found[rung]
  const span =
    shown !== null && isPresent(shown) && isPresent(shown.best) ? bestSpan(shown.best) : null
  const tasters = [...new Set(chart.points.flatMap((point) => point.tasterId ?? []))]
  const options = tasters.map((id) => ({ value: id, label: tasterName(id, whole.kitchen) }))
  return (
    <ChartFrame
      title={`${found.name}${rung === null ? '' : `, means of ${rungTitle(rung).toLocaleLowerCase('en')}`}`}
      tools={
        tasters.length > 1 ? (
          <SelectField
            label="Whose scores"
            hideLabel
            value={tasterId}
            options={[{ value: '', label: 'All tasters' }, ...options]}
            onValue={setTasterId}
          />
        ) : null
      }
      picture={
        <Suspense fallback={<ChartWaiting heightPixels={340} />}>
          <ResponseChart
            chart={chart}
            fills={levelFills(axisLevels(scores.levels))}
            label={chartAlt(found, rung, unit)}
            bestText={
              span === null
                ? null
                : bestLabel(
                    span,
                    scores.levels.map(({ name }) => name),
                    unit,
                  )
            }
            tasterId={tasterId === '' ? null : tasterId}
            say={(mean) => sayMean(mean, unit)}
          />
        </Suspense>
      }
      table={<LevelsTable answer={answer} index={index} />}
    />
  )
}
