import { absent, isPresent } from '@/core/findings/reason.ts'
import type { Cells } from '@/core/findings/rungs/cells.ts'
import { cellsWhere } from '@/core/findings/rungs/cells-where.ts'
import { factorRows } from '@/core/findings/rungs/higher-rungs.ts'
import { fitOfRung, type RungFit } from '@/core/findings/rungs/rung-of.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { allPairs } from '@/core/statistics/block-model/all-pairs.ts'
import { balancedLevels } from '@/core/statistics/block-model/balanced-levels.ts'
import type { ComparedLevels } from '@/core/statistics/block-model/level-difference.ts'
import type { Caution, Conclusion } from './conclusion-shape.ts'
import type { Judgeable } from './judged-levels.ts'
import { type VerdictAsked, verdictOf, wordsOfVerdict } from './verdict-of.ts'

/** With more sessions or tasters none weighs so much, and leaving each out would take its time. */
const mostLeftOut = 20
/** A table with gaps is fitted anew each time: beyond so many scores that would take too long. */
const mostFitted = 5_000

/** Leaving one out was not tried. */
export const notLookedAt: Conclusion['hangs'] = {
  looked: false,
  tasters: [],
  sessions: [],
  ending: { tasters: [], sessions: [] },
}

/**
 * The verdict without each taster and without each session: on whom or on which (by number, from 1) it hangs, because without
 * them something else is shown or it ends otherwise. Asked with the same allowance. Of three sessions or tasters or more and twenty at most. A complete table is
 * compared by its unit means, one with gaps is fitted anew each time.
 */
export function hangsOn(
  scores: ScoreTable,
  cells: Cells,
  found: RungFit,
  by: VerdictAsked,
  caution: Caution | null,
): Conclusion['hangs'] {
  const mayTasters = cells.tasters.length >= 3 && cells.tasters.length <= mostLeftOut
  const maySessions = cells.sessions >= 3 && cells.sessions <= mostLeftOut
  const left = leftOutOf(scores, cells, found)
  if (left === null || (!mayTasters && !maySessions)) return notLookedAt
  const words = (judgeable: Judgeable | null) =>
    judgeable === null
      ? { shown: 'nothing can be said', ending: '' }
      : wordsOfVerdict(scores, verdictOf(scores, judgeable, by), by, caution)
  const said = words(left(null, null))
  const tasters = mayTasters
    ? cells.tasters.map((name, taster) => ({ name, ...words(left(taster, null)) }))
    : []
  const sessions = maySessions
    ? Array.from({ length: cells.sessions }, (_, at) => ({
        name: at + 1,
        ...words(left(null, at)),
      }))
    : []
  const other = (one: { shown: string }) => one.shown !== said.shown
  const endsOther = (one: { shown: string; ending: string }) =>
    !other(one) && one.ending !== said.ending
  return {
    looked: true,
    tasters: tasters.filter(other).map(({ name }) => name),
    sessions: sessions.filter(other).map(({ name }) => name),
    ending: {
      tasters: tasters.filter(endsOther).map(({ name }) => name),
      sessions: sessions.filter(endsOther).map(({ name }) => name),
    },
  }
}

/** The levels compared without one taster or one session, by their codes; null where that cannot be. */
type LeftOut = (taster: number | null, session: number | null) => Judgeable | null

function leftOutOf(scores: ScoreTable, cells: Cells, found: RungFit): LeftOut | null {
  const table = completeTable(cells, scores.levels.length)
  const ordered = scores.factor.ordered
  if (table && !scores.replicated)
    return (taster, session) =>
      judgeableOf(balancedLevels(unitsWithout(table, taster, session)), found.present, ordered)
  if (cells.y.length > mostFitted) return null
  return (taster, session) => {
    const rest = cellsWhere(
      cells,
      (row) => cells.taster[row] !== taster && cells.session[row] !== session,
    )
    const rows = factorRows(scores, rest)
    const fitted = isPresent(rows) ? fitOfRung(scores, rows) : rows
    return isPresent(fitted) ? judgeableOf(fitted.fit, fitted.present, ordered) : null
  }
}

function judgeableOf(
  fit: ComparedLevels,
  present: RungFit['present'],
  ordered: boolean,
): Judgeable | null {
  if (!(fit.residualSd > 0) || fit.df2 < 1) return null
  // Along an order, pairs are no first step; the verdict's word does not name them.
  const pairs = ordered ? [] : allPairs(fit)
  return { fit, present, pairs, best: absent('not-asked') }
}

/** Sums of every taster's scores in each session at each level, where all are there equally often; else null. */
function completeTable(cells: Cells, levels: number) {
  const tasters = Math.max(1, cells.tasters.length)
  const { sessions } = cells
  if (sessions < 2) return null
  const size = tasters * sessions * levels
  const each = cells.y.length / size
  if (!Number.isInteger(each) || each === 0) return null
  const sums = new Float64Array(size)
  const counts = new Int32Array(size)
  for (let row = 0; row < cells.y.length; row += 1) {
    const taster = Math.max(0, cells.taster[row] as number)
    const at =
      (taster * sessions + (cells.session[row] as number)) * levels + (cells.level[row] as number)
    sums[at] = (sums[at] as number) + (cells.y[row] as number)
    counts[at] = (counts[at] as number) + 1
  }
  return counts.every((count) => count === each) ? { sums, each, sessions, tasters, levels } : null
}

function unitsWithout(
  { sums, each, sessions, tasters, levels }: NonNullable<ReturnType<typeof completeTable>>,
  lessTaster: number | null,
  lessSession: number | null,
): number[][] {
  const counted = each * (tasters - (lessTaster === null ? 0 : 1))
  return Array.from({ length: sessions }, (_, session) => session)
    .filter((session) => session !== lessSession)
    .map((session) =>
      Array.from({ length: levels }, (_, level) => {
        let sum = 0
        for (let taster = 0; taster < tasters; taster += 1)
          if (taster !== lessTaster)
            sum += sums[(taster * sessions + session) * levels + level] as number
        return sum / counted
      }),
    )
}
