import type { Plan } from '@/core/trial/plan-record.ts'
import { onShuffledPlates } from '@/core/trial/served-at-table.ts'

/** What tasters guess at the end: which was the usual one, or which had most of the factor. */
export type GuessAsked = 'usual' | 'most'

/**
 * Whoever plates for themselves, or weighs from cups and tastes alone, guesses which had most of the factor: hands feel a wet
 * dough, so the guess says how blind they were. Of a choice, and elsewhere where the plan asks, which was the usual one. Null
 * where nothing is asked.
 */
export function guessAsked(plan: Plan): GuessAsked | null {
  const alone = onShuffledPlates(plan) || (plan.atTable?.cups === true && plan.tasters.length === 1)
  const inOrder = plan.levels.every(({ value }) => value !== null)
  if (alone && inOrder && plan.levels.length > 0) return 'most'
  const usual = plan.levels.some(({ control }) => control)
  return plan.atTable?.asksUsual || (alone && usual) ? 'usual' : null
}
