import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { mixedApart } from './doughs.ts'

/** How many pieces a session needs. `perBatch` is the most any one dough must give. */
export interface PiecesAsked {
  counted: number
  spare: number
  warmUp: number
  total: number
  perBatch: number
}

/**
 * Pieces of one session: one of every level in each flight, the spares of each level, and the warm-up piece of the control
 * (without a control, of the first dough). Spares are counted for each level, since a spare must have its level.
 */
export function piecesAsked(
  plan: Pick<Plan, 'levels' | 'flights' | 'sparePieces' | 'warmUpPiece' | 'doughs' | 'factor'>,
): PiecesAsked {
  const levels: Level[] = plan.levels
  const counted = levels.length * plan.flights
  const spare = levels.length * plan.sparePieces
  const warmUp = plan.warmUpPiece ? 1 : 0
  const total = counted + spare + warmUp
  const perBatch = mixedApart(plan) ? plan.flights + plan.sparePieces + warmUp : total
  return { counted, spare, warmUp, total, perBatch }
}
