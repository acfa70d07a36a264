import type { KeptTimes } from '@/core/trial/day-wishes.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { askedDay } from './asked-day.ts'
import { bakedApart } from './baked-together.ts'
import { dayInTime, type WallClock } from './day-in-time.ts'
import { type DayPicture, dayPicture } from './day-picture.ts'
import type { DealtDay } from './dealt-day.ts'
import { keptTimes, timesToKeep } from './kept-times.ts'
import { type ClockPlan, planTheDay } from './plan-the-day.ts'
import { dayByTimes, plannedDay } from './planned-day.ts'
import { problemOfDay } from './problem-of-day.ts'
import { type RunRow, runSheet } from './run-sheet.ts'
import type { DayProblem, Placed } from './search/day-problem.ts'
import type { Budget } from './search/solve-day.ts'
import { heldAgainstMarks, type TriedMarks } from './tried-marks.ts'
import { type WaitRow, waitsOfDay } from './waits-of-day.ts'

/** A session's day by the clock, ready to be shown; seconds count from `originAt` (UTC ms; null where no moment is fixed). */
export interface ClockOfPlan {
  /** What the search says of the plan: null for the quick first one, and where nothing was found at all. */
  clock: ClockPlan | null
  /** Nothing was found, not even with waits far off: what is shown is the quick first plan. */
  nothing: boolean
  originAt: number | null
  rows: RunRow[]
  picture: DayPicture
  waits: WaitRow[]
  /** How the day stands marks that come otherwise than expected: null for the quick first plan, and where nothing ends by one. */
  marks: TriedMarks | null
  /** The times to keep in the plan; null where no moment is fixed. */
  toKeep: KeptTimes | null
  /** These very times are kept already. */
  kept: boolean
}

type Day = DealtDay & { number: number }

/** The day that is followed now, without a search: the kept one, else the quick first plan of the same model. */
export function firstClock(plan: Plan, day: Day, wall: WallClock): ClockOfPlan {
  const asked = problemOfDay(plan, day)
  const kept = keptTimes(plan, day, asked.problem)
  const followed = plannedDay(plan, day)
  const inTime = dayInTime(plan, followed.spanSeconds, wall)
  const begins =
    kept?.begins ?? firstInTime(plan, followed.begins, inTime.originAt, followed.spanSeconds)
  const originAt = kept?.originAt ?? inTime.originAt
  return shown({
    plan,
    day,
    asked,
    begins,
    originAt,
    clock: null,
    marks: null,
    kept: kept !== null,
  })
}

/** The best day within the budget. */
export function searchedClock(plan: Plan, day: Day, wall: WallClock, budget: Budget): ClockOfPlan {
  const { spanSeconds } = plannedDay(plan, day)
  const { asked, problem, originAt } = askedDay(plan, day, spanSeconds, wall)
  const share = (part: number) => ({ ...budget, milliseconds: budget.milliseconds * part })
  const found = planTheDay(problem, asked.parts, share(0.75))
  const held = found?.fits
    ? heldAgainstMarks(asFound(problem, found), asked.parts, found, share(0.25))
    : { plan: found, marks: null }
  const { plan: clock, marks } = held
  if (!clock) return { ...firstClock(plan, day, wall), nothing: true }
  const kept = keptTimes(plan, day, asked.problem)
  const same =
    kept !== null &&
    kept.originAt === originAt &&
    Object.entries(clock.begins).every(([id, at]) => kept.begins[id] === at)
  return shown({ plan, day, asked, begins: clock.begins, originAt, clock, marks, kept: same })
}

/** The day as a found plan keeps it: where a night parts the bakes, without the demand that none does. */
const asFound = (problem: DayProblem, { night }: ClockPlan) =>
  night === null ? problem : (bakedApart(problem) ?? problem)

/** The first plan ends when people eat, or begins when one starts; the nights are left to the search. */
function firstInTime(plan: Plan, begins: Placed, originAt: number | null, span: number): Placed {
  if (originAt === null || plan.day?.fixed?.what !== 'eat') return begins
  const shift = Math.round((plan.day.fixed.at - originAt) / 1000) - span
  return Object.fromEntries(Object.entries(begins).map(([id, at]) => [id, at + shift]))
}

interface Shown {
  plan: Plan
  day: Day
  asked: ReturnType<typeof problemOfDay>
  begins: Placed
  originAt: number | null
  clock: ClockPlan | null
  marks: TriedMarks | null
  kept: boolean
}

function shown({ plan, day, asked, begins, originAt, clock, marks, kept }: Shown): ClockOfPlan {
  const { problem, parts } = asked
  const first = Math.min(...Object.values(begins))
  const planned = dayByTimes(asked, begins, originAt)
  return {
    ...{ clock, nothing: false, originAt, marks, kept },
    rows: runSheet(parts, begins, day.dealt.doughOrder),
    picture: dayPicture(asked, planned, day, first),
    waits: waitsOfDay(plan, parts, begins),
    toKeep: originAt === null ? null : timesToKeep({ plan, day, problem }, begins, originAt),
  }
}
