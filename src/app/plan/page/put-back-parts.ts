import type { Plan } from '@/core/trial/plan-record.ts'

/** Undoes one change: the parts of the plan it touched go back to what they were, whatever else was changed since stays. */
export function putBackParts(before: Plan, after: Plan): (now: Plan) => Plan {
  const keys = Object.keys(before) as (keyof Plan)[]
  const touched = keys.filter((key) => before[key] !== after[key])
  return (now) => ({
    ...now,
    ...Object.fromEntries(touched.map((key) => [key, before[key]])),
  })
}
