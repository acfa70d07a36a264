import { startingPlan } from '@/core/plan-edits/start/starting-plan.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/** Ids that count up, so that a test can name them. */
export function counting(prefix = 'id'): () => string {
  let count = 0
  return () => `${prefix}${++count}`
}

/** The plan a new trial opens with: flour 100, water 70, salt 2, instant yeast 0.8; hydration 66, 70 (control), 74. */
export function planOfTest(): Plan {
  return startingPlan({ newId: counting(), at: 1_700_000_000_000, zone: 'Europe/Rome' })
}

export function idOf(plan: Plan, name: string): string {
  const found = plan.formula.ingredients.find((each) => each.name === name)
  if (!found) throw new Error(`no ${name} in the plan of the test`)
  return found.id
}
