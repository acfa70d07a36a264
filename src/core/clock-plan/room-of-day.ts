import { type OvenPace, usualOvenPace } from '@/core/kitchen/oven-times.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/** Hands for taking one piece out of the oven, in seconds, where the bake does not say: our own guess. */
export const usualPullSeconds = 15

/** Until a kitchen oven is as hot again after a load, in seconds, where nothing is known of it: a stated default, our own guess. */
const usualRecoverySeconds = 60

/** What a day may use: how many of what, and the oven's own times. */
export interface DayRoom {
  hands: number
  mixers: number
  /** Null where the fridge holds all. */
  fridgePlaces: number | null
  recoverySeconds: number
  pace: OvenPace
}

type Asked = Pick<Plan, 'steps' | 'pairsOfHands' | 'day'>

/** The room of a plan's day: the baker's own hands and all helpers, as if they stayed; their hours are blocks. */
export function roomOfDay({ steps, pairsOfHands, day }: Asked): DayRoom {
  const bakes = steps.filter(({ kind }) => kind === 'bake')
  const said = bakes.findLast(({ recoverySeconds }) => recoverySeconds !== undefined)
  return {
    hands: pairsOfHands + (day?.helpers?.length ?? 0),
    mixers: day?.mixers ?? 1,
    fridgePlaces: day?.fridgePlaces ?? null,
    recoverySeconds: said?.recoverySeconds ?? unsaidRecoverySeconds(day),
    pace: day?.oven ?? usualOvenPace,
  }
}

/** How soon the oven is hot again after a load, in seconds, where the bake does not say: as the oven brought it, else as usual. */
export const unsaidRecoverySeconds = (day: Plan['day']): number =>
  day?.recoverySeconds ?? usualRecoverySeconds

/** What passes between two loads, in seconds: hands for the last pull, then the oven's recovery. */
export interface BetweenLoads {
  pullSeconds: number
  recoverySeconds: number
}

export function betweenLoads(plan: Asked): BetweenLoads {
  const pulls = plan.steps.flatMap(({ kind, pullSeconds }) =>
    kind === 'bake' ? [pullSeconds ?? usualPullSeconds] : [],
  )
  return {
    pullSeconds: pulls.at(-1) ?? usualPullSeconds,
    recoverySeconds: roomOfDay(plan).recoverySeconds,
  }
}
