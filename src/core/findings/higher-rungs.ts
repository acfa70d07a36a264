import type { Better } from '@/core/trial/response.ts'
import type { Cells } from './cells.ts'
import { comparableMeans } from './comparable-means.ts'
import { type Absent, absent, isPresent } from './reason.ts'
import { type FittedRung, rungOf } from './rung-of.ts'
import type { ScoreTable } from './score-table.ts'
import type { TasterMeans } from './taster-means.ts'

/** These pieces, for people like these: taster by level means ~ taster + factor(level). Needs two tasters. */
export function piecesRung(
  scores: ScoreTable,
  cells: Cells,
  means: TasterMeans,
  better: Better,
): FittedRung | Absent {
  if (cells.tasters.length < 2) return { reason: 'needs-two-tasters', tasters: 2 }
  const handled = handledMeans(cells, scores.levels.length)
  const filled = means.flatMap((row, taster) =>
    row.flatMap((mean, level) => (mean === null ? [] : [{ mean, taster, level }])),
  )
  return rungOf(
    scores,
    {
      y: filled.map(({ mean }) => mean),
      block: filled.map(({ taster }) => taster),
      level: filled.map(({ level }) => level),
      handled: filled.map(({ taster, level }) => handled(taster, level)),
    },
    better,
  )
}

/** These doughs, for these people: within one session of two or more flights, piece means ~ flight + factor(level). */
export function doughsRung(scores: ScoreTable, cells: Cells, better: Better): FittedRung | Absent {
  if (cells.sessions > 1) return absent('several-sessions')
  if (cells.flights < 2) return { reason: 'one-flight', flights: 2 }
  return unitsRung(scores, cells, better, 'piece', 'flight')
}

/**
 * The factor: unit means ~ block + factor(level), the block a session for batches, a flight of a session for pieces.
 * Needs two blocks, and tasters that link the units of a block.
 */
export function factorRung(scores: ScoreTable, cells: Cells, better: Better): FittedRung | Absent {
  if (scores.unit === 'batch') {
    if (cells.sessions < 2) return { reason: 'needs-two-blocks', sessions: 2 }
    return unitsRung(scores, cells, better, 'batch', 'session')
  }
  if (cells.flights < 2) return { reason: 'needs-two-blocks', flights: 2 }
  return unitsRung(scores, cells, better, 'piece', 'flight')
}

function unitsRung(
  scores: ScoreTable,
  cells: Cells,
  better: Better,
  unit: 'batch' | 'piece',
  blocking: 'session' | 'flight',
): FittedRung | Absent {
  const means = comparableMeans(cells, unit, blocking)
  return isPresent(means) ? rungOf(scores, means, better) : means
}

function handledMeans(cells: Cells, levels: number) {
  const sums = new Map<number, { sum: number; n: number; all: boolean }>()
  for (const [row, level] of cells.level.entries()) {
    const key = (cells.taster[row] as number) * levels + level
    const at = sums.get(key) ?? { sum: 0, n: 0, all: true }
    const value = cells.handled[row] ?? null
    sums.set(key, { sum: at.sum + (value ?? 0), n: at.n + 1, all: at.all && value !== null })
  }
  return (taster: number, level: number): number | null => {
    const at = sums.get(taster * levels + level)
    return at?.all ? at.sum / at.n : null
  }
}
