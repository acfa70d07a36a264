import type { Plan } from '@/core/trial/plan-record.ts'
import { levelText } from './level-text.ts'

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

/** A level of the plan by its id, in running text. */
export function levelNamed(plan: Pick<Plan, 'levels' | 'factor'>, levelId: string | null): string {
  const level = plan.levels.find(({ id }) => id === levelId)
  return level ? levelText(level, plan.factor.unitOfMeasure) : 'the one dough'
}
