import type { Plan } from './plan-record.ts'

/**
 * Places in the fridge that a session asks for: the doughs, or the pieces, that prove cold at once. All of them, since doughs
 * that prove for differently long are begun so that they meet in the oven.
 */
export function coldPlaces(
  plan: Pick<
    Plan,
    'steps' | 'levels' | 'flights' | 'sparePieces' | 'warmUpPiece' | 'doughs' | 'factor'
  >,
): number {
  const doughs = plan.doughs === 'one' && plan.factor.splitsAt !== 'mix' ? 1 : plan.levels.length
  const pieces = plan.levels.length * (plan.flights + plan.sparePieces) + (plan.warmUpPiece ? 1 : 0)
  const cold = plan.steps.filter((step) => step.kind === 'cold-proof')
  return Math.max(0, ...cold.map((step) => (step.per === 'piece' ? pieces : doughs)))
}
