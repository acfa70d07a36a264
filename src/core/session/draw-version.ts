import { bakesInDoughOrder } from '@/core/clock-plan/bake-order.ts'
import { mayBakeInOwnOrder } from '@/core/clock-plan/own-bake-order.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Session } from './session-record.ts'

/** The way of drawing in use: goes up by one whenever the same seed would deal something else. Kept with what was dealt. */
export const drawVersion = 6

/** The last way of drawing that judged a bake order by the length of the wait alone. */
const byTheWait = 4

/** The last way of drawing that dealt the sets of each session for itself. */
const setsOfEachSession = 5

/** The way in which a trial's next session is drawn: as its first was, so that a change of the rule changes no trial under way. */
export function drawVersionOf(earlier: readonly Session[]): number {
  const first = earlier.toSorted((one, other) => one.number - other.number)[0]
  if (!first) return drawVersion
  const { drawVersion: own } = first.dealt
  return own <= byTheWait ? byTheWait : Math.min(own, drawVersion)
}

/** Whether sets to tell apart complete those of earlier sessions: since version 6. */
export function setsCompleteEarlier(version: number): boolean {
  return version > setsOfEachSession
}

/**
 * Whether the first flight is baked in the order in which its doughs were mixed: since version 5 unless the planner keeps them
 * equal in any order, before that unless the wait was long against the stagger.
 */
export function firstFlightInDoughOrder(plan: Plan, version: number): boolean {
  return version <= byTheWait ? bakesInDoughOrder(plan) : !mayBakeInOwnOrder(plan)
}
