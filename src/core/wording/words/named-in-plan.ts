import type { Plan } from '@/core/trial/plan-record.ts'

/** A step by the name the plan gives it. */
export function stepName(plan: Plan, stepId: string): string {
  return plan.steps.find(({ id }) => id === stepId)?.name ?? 'a step'
}

/** An ingredient, or a starter that goes in whole, by the name the plan gives it. */
export function ingredientName(plan: Pick<Plan, 'formula'>, ingredientId: string): string {
  const { ingredients, preferments } = plan.formula
  return (
    [...ingredients, ...preferments].find(({ id }) => id === ingredientId)?.name ?? 'an ingredient'
  )
}
