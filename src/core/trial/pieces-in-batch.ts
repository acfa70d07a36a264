import type { Plan } from './plan-record.ts'

/**
 * Pieces the largest batch of a session has to give: with a dough for each level, its flights, its spares and, for the
 * level that is baked first, the warm-up piece; with one dough for all, those of every level.
 */
export function piecesAskedOfBatch(
  plan: Pick<Plan, 'levels' | 'flights' | 'sparePieces' | 'warmUpPiece' | 'doughs' | 'factor'>,
): number {
  const each = plan.flights + plan.sparePieces
  const lines = plan.doughs === 'one' && plan.factor.splitsAt !== 'mix' ? plan.levels.length : 1
  return each * lines + (plan.warmUpPiece ? 1 : 0)
}
