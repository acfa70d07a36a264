import { lazy, Suspense } from 'react'
import { levelFills } from '@/app/charts/level-fills.ts'
import { LedgerTable } from '@/app/kit/ledger-table.tsx'
import { Section } from '@/app/kit/section.tsx'
import type { FindingsAnswer } from '@/app/worker/findings-answer.ts'
import { axisLevels, chartOfResponse, rowsOf } from '@/core/figure/chart-of-response.ts'
import { type TasterCurve, tasterCurves } from '@/core/figure/taster-curves.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { agreementSentence } from '@/core/wording/agreement-sentence.ts'
import { levelNameText } from '@/core/wording/level-text.ts'
import { decimalText } from '@/core/wording/number-text.ts'
import { tasterName } from '@/core/wording/taster-name.ts'
import { ChartFrame } from './chart-frame.tsx'
import { ChartWaiting } from './chart-waiting.tsx'
import { Method } from './method.tsx'

const TasterCharts = lazy(async () => ({
  default: (await import('@/app/charts/taster-charts.tsx')).TasterCharts,
}))

/** Each taster's own curve for the main response: a mean can please nobody. */
export function TasterPart({ whole, answer }: { whole: WholeTrial; answer: FindingsAnswer }) {
  const { scores, findings } = answer
  const found = findings.responses[0]
  const response = scores.responses[0]
  if (!found || !response) return null
  const levels = axisLevels(scores.levels)
  const target = response.better.is === 'target' ? response.better.at : null
  const curves = tasterCurves(levels, rowsOf(scores, 0), response.better.is, target)
  if (curves.length < 2) return null
  const unit = findings.factor.unitOfMeasure
  const nameOf = (tasterId: string) => tasterName(tasterId, whole.kitchen)
  const bestOf = ({ bestLevelId }: TasterCurve) => {
    const level = scores.levels.find(({ name }) => String(name) === bestLevelId)
    return level ? `best at ${levelNameText(level.name, unit)}` : 'no single best'
  }
  return (
    <Section title="Each taster’s own curve">
      <p>{agreementSentence(found, unit, response.better.is)}</p>
      <ChartFrame
        title={`${found.name}, a taster’s means at each level`}
        picture={
          <Suspense fallback={<ChartWaiting heightPixels={300} />}>
            <TasterCharts
              curves={curves}
              y={chartOfResponse(scores, 0, found, null, null).y}
              fills={levelFills(levels)}
              nameOf={nameOf}
              say={bestOf}
            />
          </Suspense>
        }
        table={
          <LedgerTable
            caption="Means of each taster"
            hideCaption
            rowHead="Taster"
            columns={[
              ...scores.levels.map(({ name }) => ({
                key: String(name),
                head: levelNameText(name, unit),
              })),
              { key: 'best', head: 'Best', align: 'text' as const },
            ]}
            rows={curves.map((curve) => ({
              key: curve.tasterId,
              head: nameOf(curve.tasterId),
              cells: [
                ...scores.levels.map(({ name }) => {
                  const point = curve.points.find(({ levelId }) => levelId === String(name))
                  return point ? decimalText(point.mean, 1) : '–'
                }),
                bestOf(curve),
              ],
            }))}
          />
        }
      />
      <Method topics={['agreement', 'ranks']} />
    </Section>
  )
}
