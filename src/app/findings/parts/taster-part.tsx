import { levelFills } from '@/app/charts/level-fills.ts'
import type { FindingsSource } from '@/app/findings/findings-source.ts'
import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import { LateView } from '@/app/kit/page/late-view.tsx'
import { useCurrentLevel } from '@/app/kit/rail/current-level.ts'
import type { FindingsAnswer } from '@/app/worker/findings-answer.ts'
import { axisLevels, chartOfResponse, rowsOf } from '@/core/figure/chart-of-response.ts'
import { type TasterCurve, tasterCurves } from '@/core/figure/taster-curves.ts'
import { withoutEach } from '@/core/findings/judged/without-each.ts'
import { isPresent } from '@/core/findings/reason.ts'
import type { ResponseFindings } from '@/core/findings/response-findings-shape.ts'
import { decimalText } from '@/core/units/number-text.ts'
import { agreementSentence } from '@/core/wording/findings/agreement-sentence.ts'
import { rankFigures } from '@/core/wording/findings/rank-figures.ts'
import { levelNameText } from '@/core/wording/words/level-text.ts'
import { ChartFrame } from './chart-frame.tsx'
import { ChartWaiting } from './chart-waiting.tsx'
import { tasterCharts } from './lazy-charts.ts'
import { Method } from './method.tsx'
import { PartFold } from './part-fold.tsx'
import { WhenNear } from './when-near.tsx'

/** How one taster goes with the rest, and how much of the scale they use. */
function ownFigures({ agreement }: ResponseFindings, tasterId: string): string[] {
  const own = agreement.find(({ taster }) => taster === tasterId)
  return [own?.correlation, own?.sd].map((value) =>
    value !== undefined && isPresent(value) ? decimalText(value, 2) : '–',
  )
}

interface TasterPartProps {
  source: FindingsSource
  answer: FindingsAnswer
  index: number
}

/** Each taster's own curve for a response: a mean can please nobody. */
export function TasterPart({ source, answer, index }: TasterPartProps) {
  const lit = useCurrentLevel((state) => state.levelId)
  const { scores, findings } = answer
  const found = findings.responses[index]
  const response = scores.responses[index]
  if (!found || !response) return null
  const levels = axisLevels(scores.levels)
  const target = response.better.is === 'target' ? response.better.at : null
  const curves = tasterCurves(levels, rowsOf(scores, index), response.better.is, target)
  if (curves.length < 2) return null
  const unit = findings.factor.unitOfMeasure
  const { nameOf } = source
  const heightPixels = Math.ceil(curves.length / 4) * 150
  const bestOf = ({ bestLevelId }: TasterCurve) => {
    const level = scores.levels.find(({ id }) => id === bestLevelId)
    return level ? `best at ${levelNameText(level, unit)}` : 'no single best'
  }
  const levelIds = scores.levels.map(({ id }) => id)
  const tasted = rowsOf(scores, index).flatMap(({ tasterId, levelId, value }) =>
    tasterId === null ? [] : [{ tasterId, levelId, value }],
  )
  const levelOf = (at: number | null) => {
    const level = at === null ? undefined : scores.levels[at]
    return level ? levelNameText(level, unit) : 'none alone'
  }
  return (
    <PartFold
      title="Each taster"
      result={agreementSentence(found, findings, response.better.is)}
      index={index}
      name={found.name}
    >
      <ChartFrame
        title={`${found.name}, a taster’s means at each level`}
        picture={
          <WhenNear heightPixels={heightPixels}>
            <LateView
              part={tasterCharts}
              waiting={<ChartWaiting heightPixels={heightPixels} />}
              props={{
                curves,
                y: chartOfResponse(scores, index, found, null, null).y,
                fills: levelFills(levels),
                nameOf,
                say: bestOf,
                lit,
              }}
            />
          </WhenNear>
        }
        table={
          <LedgerTable
            caption="Means of each taster"
            hideCaption
            close
            rowHead="Taster"
            columns={[
              ...scores.levels.map((level) => ({
                key: level.id,
                head: levelNameText(level, unit),
              })),
              { key: 'best', head: 'Best', align: 'text' as const },
              { key: 'rest', head: 'With the rest' },
              { key: 'spread', head: 'SD' },
            ]}
            rows={curves.map((curve) => ({
              key: curve.tasterId,
              head: nameOf(curve.tasterId),
              cells: [
                ...scores.levels.map(({ id }) => {
                  const point = curve.points.find(({ levelId }) => levelId === id)
                  return point ? decimalText(point.mean, 1) : '–'
                }),
                bestOf(curve),
                ...ownFigures(found, curve.tasterId),
              ],
            }))}
          />
        }
      />
      <LedgerTable
        caption="With everybody, and without each taster in turn: nobody is dropped"
        close
        rowHead="Means"
        columns={[
          ...scores.levels.map((level) => ({ key: level.id, head: levelNameText(level, unit) })),
          { key: 'highest', head: 'Highest', align: 'text' as const },
        ]}
        rows={withoutEach(tasted, levelIds).map(({ tasterId, means, highest }) => ({
          key: tasterId ?? 'all',
          head: tasterId === null ? 'Everybody' : `Without ${nameOf(tasterId)}`,
          cells: [
            ...means.map((mean) => (mean === null ? '–' : decimalText(mean, 1))),
            levelOf(highest),
          ],
        }))}
      />
      <Method
        what="agreement was"
        topics={['agreement', 'correlation', 'ranks', 'rankDifference', 'page']}
        figures={rankFigures(found.ranks, findings)}
      />
    </PartFold>
  )
}
