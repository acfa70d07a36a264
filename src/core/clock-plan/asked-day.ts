import type { Plan } from '@/core/trial/plan-record.ts'
import { bakedTogether } from './baked-together.ts'
import { dayInTime, laidInTime, type WallClock } from './day-in-time.ts'
import type { DealtDay } from './dealt-day.ts'
import { type DayAsked, problemOfDay } from './problem-of-day.ts'
import type { DayProblem } from './search/day-problem.ts'

/** A day as it is asked at the moment that its plan fixes. */
export interface DayAskedInTime {
  asked: DayAsked
  /** What the search is given: the day where it may lie, no night between its bakes. */
  problem: DayProblem
  /** Second 0 (UTC ms); null where no moment is fixed. */
  originAt: number | null
}

/** What a plan asks of a day that takes some `spanSeconds` by a first plan, with its moment, its nights and its helpers' hours. */
export function askedDay(
  plan: Plan,
  day: DealtDay,
  spanSeconds: number,
  wall: WallClock,
): DayAskedInTime {
  const asked = problemOfDay(plan, day)
  const inTime = dayInTime(plan, spanSeconds, wall)
  const problem = bakedTogether(plan, asked.parts, laidInTime(asked.problem, inTime))
  return { asked, problem, originAt: inTime.originAt }
}
