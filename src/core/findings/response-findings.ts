import { bootstrapOfBest } from '@/core/findings/best/bootstrap-of-best.ts'
import { conclude } from '@/core/findings/evidence/conclude.ts'
import { agreementOf } from '@/core/findings/judged/agreement.ts'
import { tooMuchOrTooLittle } from '@/core/findings/judged/too-much-or-too-little.ts'
import { cellsOf } from '@/core/findings/rungs/cells.ts'
import type { FittedRungs } from '@/core/findings/rungs/decisive-rung.ts'
import { doughsRung, factorRung, piecesRung } from '@/core/findings/rungs/higher-rungs.ts'
import { levelSummaries } from '@/core/findings/rungs/level-summaries.ts'
import { ranksOf } from '@/core/findings/rungs/ranks-of.ts'
import { besideOf, rowsRung } from '@/core/findings/rungs/rows-rung.ts'
import type { FittedRung } from '@/core/findings/rungs/rung-of.ts'
import { tasterMeans } from '@/core/findings/rungs/taster-means.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { type Absent, absent, isPresent } from './reason.ts'
import type { ResponseFindings } from './response-findings-shape.ts'

/**
 * Everything found about the response at `index` of the table, in the shape of the findings document. `resamples` null leaves
 * the bootstrap out (`not-asked`). Each part that cannot be answered carries its reason.
 */
export function responseFindings(
  scores: ScoreTable,
  index: number,
  bootstrap: { seed: number; resamples: number } | null,
): ResponseFindings {
  const response = scores.responses[index]
  if (!response) throw new RangeError(`the table has no response ${index}`)
  const { better } = response
  const cells = cellsOf(scores, index)
  const means = tasterMeans(cells, scores.levels.length)
  const none = absent('no-scores')
  const some = cells.y.length > 0
  const rows = some ? rowsRung(scores, cells, better) : none
  const fitted: FittedRungs = {
    pieces: some ? piecesRung(scores, cells, means, better) : none,
    doughs: some ? doughsRung(scores, cells, better) : none,
    factor: some ? factorRung(scores, cells, better) : none,
  }
  const rungs = {
    pieces: shown(fitted.pieces),
    doughs: shown(fitted.doughs),
    factor: shown(fitted.factor),
  }
  const levelIds = scores.levels.map(({ id }) => id)
  const direction = index === 0 ? (scores.expectation?.direction ?? null) : null
  return {
    id: response.id,
    name: response.name,
    n: cells.y.length,
    failures: response.failures,
    levels: levelSummaries(scores, cells),
    rows: isPresent(rows)
      ? {
          ...rows.rung,
          freshness: besideOf(scores, cells, 'minutes', rows),
          order: besideOf(scores, cells, 'position', rows),
        }
      : rows,
    ...rungs,
    ranks: some ? ranksOf(scores, means, direction) : none,
    bootstrap: bootstrap ? bootstrapOfBest(scores, index, bootstrap) : absent('not-asked'),
    justAboutRight: tooMuchOrTooLittle(scores, index),
    agreement: agreementOf(cells, means, levelIds, better),
    conclusion: conclude(scores, index, cells, fitted),
  }
}

function shown(fitted: FittedRung | Absent) {
  return isPresent(fitted) ? fitted.rung : fitted
}
