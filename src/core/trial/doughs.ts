import type { Plan } from './plan-record.ts'

/** True when every level gets a dough of its own: always when the factor acts at the mix, else when the plan says so. */
export function mixedApart(plan: Pick<Plan, 'doughs' | 'factor'>): boolean {
  return plan.doughs === 'apart' || plan.factor.splitsAt === 'mix'
}

/** What gets its level separately, and so what a finding about the factor counts: the batch, or the piece of one dough. */
export function unitOf(plan: Pick<Plan, 'doughs' | 'factor'>): 'batch' | 'piece' {
  return mixedApart(plan) ? 'batch' : 'piece'
}
