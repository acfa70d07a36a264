import { useState } from 'react'
import { levelFills } from '@/app/charts/level-fills.ts'
import type { FindingsSource } from '@/app/findings/findings-source.ts'
import { SelectField } from '@/app/kit/field/select-field.tsx'
import { LateView } from '@/app/kit/page/late-view.tsx'
import { useCurrentLevel } from '@/app/kit/rail/current-level.ts'
import type { FindingsAnswer } from '@/app/worker/findings-answer.ts'
import { bestSpan } from '@/core/figure/best-span.ts'
import {
  axisLevels,
  chartOfResponse,
  withDescribedMeans,
  withMeansAlone,
} from '@/core/figure/chart-of-response.ts'
import { isPresent } from '@/core/findings/reason.ts'
import { shownRung } from '@/core/wording/findings/answer-of-rung.ts'
import { bestLabel } from '@/core/wording/findings/best-label.ts'
import { chartAlt } from '@/core/wording/findings/chart-alt.ts'
import { chartTitle, marginLabel } from '@/core/wording/findings/chart-title.ts'
import { ChartFrame } from './chart-frame.tsx'
import { ChartWaiting } from './chart-waiting.tsx'
import { responseChart } from './lazy-charts.ts'
import { LevelsTable } from './levels-table.tsx'
import { sayMean } from './say-mean.ts'

/** The chart's own height, its labels and its readout's line. */
const responseChartPixels = 300 + 58 + 22

interface ResponsePartProps {
  source: FindingsSource
  answer: FindingsAnswer
  index: number
}

/** One response against the factor under the rail, all tasters or one, or the same as a table. */
export function ResponsePart({ source, answer, index }: ResponsePartProps) {
  const [tasterId, setTasterId] = useState('')
  const lit = useCurrentLevel((state) => state.levelId)
  const { scores, findings, curves } = answer
  const found = findings.responses[index]
  if (!found) return null
  const rung = shownRung(found)
  const alongLevels = found.conclusion.shown.some(({ is }) => is !== 'pairs')
  const alone = found.conclusion.oneEvening !== null
  const drawn = chartOfResponse(
    scores,
    index,
    found,
    rung,
    alongLevels ? (curves[index] ?? null) : null,
  )
  const chart = alone ? withMeansAlone(drawn, found) : withDescribedMeans(drawn, found)
  const unit = findings.factor.unitOfMeasure
  const shown = rung === null ? null : found[rung]
  const span = bestSpan(
    found.conclusion,
    shown !== null && isPresent(shown) && isPresent(shown.best) ? shown.best : null,
  )
  const tasters = [...new Set(chart.points.flatMap((point) => point.tasterId ?? []))]
  const options = tasters.map((id) => ({ value: id, label: source.nameOf(id) }))
  return (
    <ChartFrame
      title={chartTitle(found.name, scores.responses[index])}
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
        <LateView
          part={responseChart}
          waiting={<ChartWaiting heightPixels={responseChartPixels} />}
          props={{
            chart,
            fills: levelFills(axisLevels(scores.levels)),
            label: chartAlt(found, rung, findings),
            bestText:
              span === null || alone
                ? null
                : bestLabel(
                    span,
                    scores.levels.map(({ name }) => name),
                    unit,
                  ),
            marginText: alone ? null : marginLabel(scores.responses[index]),
            tasterId: tasterId === '' ? null : tasterId,
            lit,
            say: (mean) => sayMean(mean, unit),
          }}
        />
      }
      table={<LevelsTable answer={answer} index={index} />}
    />
  )
}
