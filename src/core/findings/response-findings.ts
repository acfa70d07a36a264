import { asGoodAs, type RungSize } from '@/core/findings/best/as-good-as.ts'
import { bootstrapOfBest } from '@/core/findings/best/bootstrap-of-best.ts'
import { easiestOf } from '@/core/findings/best/easiest.ts'
import { agreementOf } from '@/core/findings/judged/agreement.ts'
import { tooMuchOrTooLittle } from '@/core/findings/judged/too-much-or-too-little.ts'
import { verdictOf } from '@/core/findings/judged/verdict.ts'
import { type Cells, cellsOf } from '@/core/findings/rungs/cells.ts'
import { decisiveRung, type RungName } from '@/core/findings/rungs/decisive-rung.ts'
import { doughsRung, factorRung, piecesRung } from '@/core/findings/rungs/higher-rungs.ts'
import { levelSummaries } from '@/core/findings/rungs/level-summaries.ts'
import { ranksOf } from '@/core/findings/rungs/ranks-of.ts'
import { besideOf, rowsRung } from '@/core/findings/rungs/rows-rung.ts'
import type { FittedRung } from '@/core/findings/rungs/rung-of.ts'
import { tasterMeans } from '@/core/findings/rungs/taster-means.ts'
import type { ScoreResponse, ScoreTable } from '@/core/findings/table/score-table.ts'
import { type Absent, absent, isPresent } from './reason.ts'
import type { Equivalence, ResponseFindings, Verdict } from './response-findings-shape.ts'

type FittedRungs = Record<RungName, FittedRung | Absent>

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
  const equivalence = equivalenceOf(scores, cells, fitted, response)
  const names = scores.levels.map(({ name }) => name)
  const direction = index === 0 ? (scores.expectation?.direction ?? null) : null
  return {
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
    equivalence,
    easiest: easiestOf(scores, equivalence),
    agreement: agreementOf(cells, means, names, better),
    verdict: verdicts(cells, fitted, response.margin),
  }
}

function shown(fitted: FittedRung | Absent) {
  return isPresent(fitted) ? fitted.rung : fitted
}

function verdicts(cells: Cells, fitted: FittedRungs, margin: number | null) {
  const said = (rung: FittedRung | Absent, mayLean: boolean): Verdict | Absent =>
    isPresent(rung)
      ? verdictOf(
          rung.decisive,
          rung.present.levels.map(({ name }) => name),
          margin,
          mayLean,
        )
      : rung
  return {
    pieces: said(fitted.pieces, cells.tasters.length >= 4),
    doughs: said(fitted.doughs, false),
    factor: said(fitted.factor, cells.sessions >= 3),
  }
}

function equivalenceOf(
  scores: ScoreTable,
  cells: Cells,
  fitted: FittedRungs,
  { better, margin }: ScoreResponse,
): Equivalence[] | Absent {
  const rung = decisiveRung(fitted)
  const found = rung ? fitted[rung] : fitted.factor
  if (!isPresent(found)) return margin === null ? absent('no-margin') : found
  return asGoodAs(found, better, margin, sizeOf(scores, cells, rung ?? 'factor'))
}

function sizeOf(scores: ScoreTable, cells: Cells, rung: RungName): RungSize {
  if (rung === 'pieces') return { of: 'tasters', count: cells.tasters.length }
  if (rung === 'factor' && scores.unit === 'batch') return { of: 'sessions', count: cells.sessions }
  return { of: 'flights', count: cells.flights }
}
