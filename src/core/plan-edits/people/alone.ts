import type { Plan } from '@/core/trial/plan-record.ts'
import { withAtTable } from './at-table.ts'

/** The plan with plates that its taster shuffles: everything is served twice then, since repeating oneself is all one person measures. */
export function withShuffledPlates(plan: Plan, on: boolean): Plan {
  return withAtTable(plan, {
    shuffledPlates: on,
    ...(on ? { again: plan.levels.map(({ id }) => id) } : {}),
  })
}

/** The plan with doughs weighed from lidded cups: then all get water of one temperature, since a matched one would tell the level. */
export function withCups(plan: Plan, on: boolean): Plan {
  const cups = withAtTable(plan, { cups: on })
  return on && cups.temperature?.matched
    ? { ...cups, temperature: { ...cups.temperature, matched: false } }
    : cups
}
