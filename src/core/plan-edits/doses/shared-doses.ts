import type { Plan, SharedDose } from '@/core/trial/plan-record.ts'

/** The plan with an ingredient dosed to all batches from one stock or dry mix, in place of how it was shared before. */
export function withSharedDose(plan: Plan, ingredientId: string, by: SharedDose['by']): Plan {
  const { sharedDoses } = withoutSharedDose(plan, ingredientId)
  return { ...plan, sharedDoses: [...sharedDoses, { ingredientId, by }] }
}

/** The plan with an ingredient weighed singly into every batch. */
export function withoutSharedDose(plan: Plan, ingredientId: string): Plan {
  const others = plan.sharedDoses.filter((dose) => dose.ingredientId !== ingredientId)
  return { ...plan, sharedDoses: others }
}
