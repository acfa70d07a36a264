import { askedDay } from '@/core/clock-plan/asked-day.ts'
import type { WallClock } from '@/core/clock-plan/day-in-time.ts'
import type { DealtDay } from '@/core/clock-plan/dealt-day.ts'
import { timesToKeep } from '@/core/clock-plan/kept-times.ts'
import { type Budget, mostRung, solveDay } from '@/core/clock-plan/search/solve-day.ts'
import { spreadSeconds } from '@/core/clock-plan/search/spread-seconds.ts'
import { straightened } from '@/core/clock-plan/straightened.ts'
import type { KeptTimes } from '@/core/trial/day-wishes.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/** A day that goes within all tolerances: from when to when (UTC ms), and how equal its doughs are. */
export interface LaidDay {
  startAt: number
  endAt: number
  /** Quarters of tolerance by which the waits are off at most. */
  rung: number
  ageSpreadSeconds: number
  mouthSpreadSeconds: number
  toKeep: KeptTimes
}

/** Lays a plan's day at the moment it asks for, no night between its bakes; null where nothing goes, or was found within the budget. */
export function laidDay(
  plan: Plan,
  day: DealtDay & { number: number },
  spanSeconds: number,
  wall: WallClock,
  budget: Budget,
): LaidDay | null {
  const { asked, problem, originAt } = askedDay(plan, day, spanSeconds, wall)
  if (originAt === null) return null
  const solved = solveDay(problem, budget, { most: mostRung })
  if (!solved.ok) return null
  const { rung } = solved.plan
  const begins = straightened(problem, asked.parts, solved.plan.begins, () => rung)
  const at = (seconds: number) => originAt + seconds * 1000
  const ends = problem.tasks.map(({ id, activeSeconds }) => (begins[id] ?? 0) + activeSeconds)
  return {
    startAt: at(Math.min(...Object.values(begins))),
    endAt: at(Math.max(...ends)),
    rung,
    ageSpreadSeconds: spreadSeconds(problem, begins, 'age'),
    mouthSpreadSeconds: spreadSeconds(problem, begins, 'oven'),
    toKeep: timesToKeep({ plan, day, problem: asked.problem }, begins, originAt),
  }
}
