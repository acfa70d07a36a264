import { type Absent, isPresent } from '@/core/findings/reason.ts'
import { cellsOf } from '@/core/findings/rungs/cells.ts'
import { comparableMeans } from '@/core/findings/rungs/comparable-means.ts'
import { sessionLevelMeans } from '@/core/findings/rungs/session-level-means.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'

/** The unit means of a trial's main response: value, session and level, codes from 0 up. */
export interface UnitRows {
  y: number[]
  session: number[]
  level: number[]
}

/**
 * What the rung of the factor compares, of one session too: means of batches, or of each level in each session where the levels
 * part late. Refused where tasters of a session share no unit.
 */
export function unitRowsOf(scores: ScoreTable): UnitRows | Absent {
  const cells = cellsOf(scores, 0)
  if (scores.unit === 'batch') {
    const means = comparableMeans(cells, 'batch', 'session')
    if (!isPresent(means)) return means
    return { y: [...means.y], session: [...means.block], level: [...means.level] }
  }
  const pieces = comparableMeans(cells, 'piece', 'flight')
  if (!isPresent(pieces)) return pieces
  const rows = sessionLevelMeans(pieces, scores.levels.length)
  return { y: Array.from(rows.y), session: Array.from(rows.block), level: Array.from(rows.level) }
}
