import type { Plan } from '@/core/trial/plan-record.ts'

/** Undoes one change: the parts of the plan it touched go back to what they were, whatever else was changed since stays. */
export function putBackParts(before: Plan, after: Plan): (now: Plan) => Plan {
  const keys = Object.keys({ ...before, ...after }) as (keyof Plan)[]
  const touched = keys.filter((key) => before[key] !== after[key])
  return (now) => {
    const others = Object.entries(now).filter(([key]) => !touched.includes(key as keyof Plan))
    const back = touched.flatMap((key) => (before[key] === undefined ? [] : [[key, before[key]]]))
    return { ...Object.fromEntries(others), ...Object.fromEntries(back) } as Plan
  }
}
