import { type Absent, absent, isPresent } from '@/core/findings/reason.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import type { Better } from '@/core/trial/response.ts'
import type { Cells } from './cells.ts'
import { comparableMeans } from './comparable-means.ts'
import { ownSlopes } from './own-slopes.ts'
import { type FittedRung, type RungRows, rungOf } from './rung-of.ts'
import { sessionLevelMeans } from './session-level-means.ts'
import { pairVariances, type TasterMeans } from './taster-means.ts'

/**
 * These pieces, for people like these: taster by level means ~ taster + factor(level). Needs two tasters; of what the baker
 * scored alone no tasters would help, so the reason tells what answers it instead.
 */
export function piecesRung(
  scores: ScoreTable,
  cells: Cells,
  means: TasterMeans,
  better: Better,
): FittedRung | Absent {
  const rows = piecesRows(scores, cells, means)
  if (!isPresent(rows)) return rows
  return rungOf(scores, rows, better, {
    trend: (present) => ownSlopes(means, present),
    pairVariances: ({ index }) => {
      const all = pairVariances(cells, scores.levels.length)
      return all && index.map((a) => index.map((b) => all[a]?.[b] as number))
    },
  })
}

/** What the rung of these pieces compares. */
export function piecesRows(
  scores: ScoreTable,
  cells: Cells,
  means: TasterMeans,
): RungRows | Absent {
  if (cells.tasters.length === 0) return withoutTasters(scores, cells)
  if (cells.tasters.length < 2) return { reason: 'needs-two-tasters', tasters: 2 }
  const handled = handledMeans(cells, scores.levels.length)
  const filled = means.flatMap((row, taster) =>
    row.flatMap((mean, level) => (mean === null ? [] : [{ mean, taster, level }])),
  )
  return {
    y: filled.map(({ mean }) => mean),
    block: filled.map(({ taster }) => taster),
    level: filled.map(({ level }) => level),
    handled: filled.map(({ taster, level }) => handled(taster, level)),
  }
}

/** Why values that no taster gave say nothing of pieces or doughs yet: made again they do, by the rung above. */
function withoutTasters({ unit }: ScoreTable, cells: Cells): Absent {
  if (cells.sessions > 1) return absent('several-sessions')
  if (cells.flights > 1) return absent('needs-two-tasters')
  return unit === 'batch'
    ? { reason: 'needs-two-sessions', sessions: 2 }
    : { reason: 'needs-two-blocks', flights: 2 }
}

/** These doughs, for these people: within one session of two or more flights, piece means ~ flight + factor(level). */
export function doughsRung(scores: ScoreTable, cells: Cells, better: Better): FittedRung | Absent {
  return found(scores, doughsRows(cells), better)
}

/** What the rung of these doughs compares. */
export function doughsRows(cells: Cells): RungRows | Absent {
  if (cells.sessions > 1) return absent('several-sessions')
  // One value of a whole dough stays one value, however many flights its pieces make.
  if (cells.flights < 2 && cells.ofDoughs) return { reason: 'needs-two-sessions', sessions: 2 }
  if (cells.flights < 2) return { reason: 'one-flight', flights: 2 }
  return comparableMeans(cells, 'piece', 'flight')
}

/**
 * The factor: unit means ~ session + factor(level). A unit is a batch; where the levels part late it is all that a session had of a
 * level, freed from its flights: flights sharpen that mean and are no blocks of their own, since what a day does to a level they
 * share. Needs two sessions, and tasters that link the units of each; doughs that were made again in no block (completely
 * randomised) need none: unit means ~ factor(level), with the one error between doughs of a level.
 */
export function factorRung(scores: ScoreTable, cells: Cells, better: Better): FittedRung | Absent {
  return found(scores, factorRows(scores, cells), better)
}

/** What the rung of the factor compares. */
export function factorRows(scores: ScoreTable, cells: Cells): RungRows | Absent {
  if (cells.sessions < 2 && !scores.replicated) return { reason: 'needs-two-blocks', sessions: 2 }
  if (scores.unit === 'batch') return comparableMeans(cells, 'batch', 'session')
  const pieces = comparableMeans(cells, 'piece', 'flight')
  if (scores.replicated) return pieces
  return isPresent(pieces) ? sessionLevelMeans(pieces, scores.levels.length) : pieces
}

function found(scores: ScoreTable, rows: RungRows | Absent, better: Better): FittedRung | Absent {
  return isPresent(rows) ? rungOf(scores, rows, better) : rows
}

/** Mean level as handled of what a taster had at a level; NaN where one of them was not logged. */
function handledMeans(cells: Cells, levels: number) {
  const sums = new Float64Array(cells.tasters.length * levels)
  const counts = new Int32Array(sums.length)
  for (let row = 0; row < cells.y.length; row += 1) {
    const at = (cells.taster[row] as number) * levels + (cells.level[row] as number)
    sums[at] = (sums[at] as number) + (cells.handled[row] as number)
    counts[at] = (counts[at] as number) + 1
  }
  return (taster: number, level: number): number => {
    const at = taster * levels + level
    return (sums[at] as number) / (counts[at] as number)
  }
}
