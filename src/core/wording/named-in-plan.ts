import type { Plan } from '@/core/trial/plan-record.ts'

/** A step by the name the plan gives it. */
export function stepName(plan: Plan, stepId: string): string {
  return plan.steps.find(({ id }) => id === stepId)?.name ?? 'a step'
}

/** An ingredient by the name the plan gives it. */
export function ingredientName(plan: Plan, ingredientId: string): string {
  return plan.formula.ingredients.find(({ id }) => id === ingredientId)?.name ?? 'an ingredient'
}
