import type { Plan } from './plan-record.ts'

/** A plan without what belongs to one date: the moment it was planned from, the hours of helpers, the times that were found. */
export function undatedPlan({ day, ...plan }: Plan): Plan {
  if (!day) return plan
  const { fixed: _, helpers: __, kept: ___, ...lasting } = day
  return Object.keys(lasting).length > 0 ? { ...plan, day: lasting } : plan
}
