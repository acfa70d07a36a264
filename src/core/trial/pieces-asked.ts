import { piecesAskedOfBatch } from './pieces-in-batch.ts'
import type { Plan } from './plan-record.ts'

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
  const counted = plan.levels.length * plan.flights
  const spare = plan.levels.length * plan.sparePieces
  const warmUp = plan.warmUpPiece ? 1 : 0
  return {
    counted,
    spare,
    warmUp,
    total: counted + spare + warmUp,
    perBatch: piecesAskedOfBatch(plan),
  }
}
