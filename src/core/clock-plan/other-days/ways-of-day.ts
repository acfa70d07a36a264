import { askedDay } from '@/core/clock-plan/asked-day.ts'
import type { WallClock } from '@/core/clock-plan/day-in-time.ts'
import type { DealtDay } from '@/core/clock-plan/dealt-day.ts'
import { movedSeconds } from '@/core/clock-plan/mended-plan.ts'
import { plannedDay } from '@/core/clock-plan/planned-day.ts'
import type { CalendarDay } from '@/core/clock-plan/quiet-hours.ts'
import type { MomentMend } from '@/core/clock-plan/search/mend.ts'
import { otherMoment } from '@/core/clock-plan/search/mends.ts'
import type { Budget } from '@/core/clock-plan/search/solve-day.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Step } from '@/core/trial/step.ts'
import { type DayWay, planOfWay } from './day-way.ts'
import { type LaidDay, laidDay } from './laid-day.ts'

/** A day that goes, with what is other about it and how many nights lie in it. */
export interface FoundWay extends LaidDay {
  way: DayWay
  nights: number
}

/** At most so many stand side by side. */
const mostWays = 3
/** Of each kind so many are tried, the nearest to what was asked first. */
const mostTries = 8
const coldStepSeconds = 1800
/** A cold wait stays one: from an hour to three days. Common practice, no source. */
const coldSeconds = { least: 3600, most: 72 * 3600 }

/**
 * Up to three days that go within all tolerances and differ in kind: the one that was asked for; where that does not go, the
 * nearest begin or end that does; the same with a cold wait of another length for all, so that one night more or fewer lies in it;
 * and where only the night is in the way, with somebody at work then. None where no moment is fixed. `known`: the other moment that
 * the mends of the day name, where they are at hand.
 */
export function waysOfDay(
  plan: Plan,
  day: DealtDay & { number: number },
  wall: WallClock,
  budget: Budget,
  known: MomentMend | null = null,
): FoundWay[] {
  const fixed = plan.day?.fixed
  if (!fixed) return []
  const until = budget.clock() + budget.milliseconds
  const { spanSeconds } = plannedDay(plan, day)
  const quarter = (): Budget => ({
    ...budget,
    milliseconds: Math.min(budget.milliseconds / 4, until - budget.clock()),
  })
  const lay = (way: DayWay, moreSeconds = 0): FoundWay | null => {
    const share = quarter()
    if (share.milliseconds <= 0) return null
    const laid = laidDay(planOfWay(plan, way), day, spanSeconds + moreSeconds, wall, share)
    return laid && { way, ...laid, nights: nightsBetween(laid.startAt, laid.endAt, wall) }
  }
  const asked = lay({ way: 'as-asked' })
  const span = asked ? (asked.endAt - asked.startAt) / 1000 : spanSeconds
  const base: Wished = {
    startAt: asked?.startAt ?? (fixed.what === 'start' ? fixed.at : fixed.at - span * 1000),
    endAt: asked?.endAt ?? (fixed.what === 'eat' ? fixed.at : fixed.at + span * 1000),
  }
  const awake = awakeAt(plan, wall)
  const first = (ways: readonly (DayWay & { more?: number })[]) => {
    for (const { more = 0, ...way } of ways.slice(0, mostTries)) {
      const found = lay(way, more)
      if (found) return found
    }
    return null
  }
  const moved = asked
    ? null
    : first(known ? [movedBy(fixed.at, known)] : movedDay(plan, day, spanSeconds, wall, quarter()))
  const nights = nightsBetween(base.startAt, base.endAt, wall)
  const colds = (asked ? [1, -1] : [0, 1, -1]).flatMap((more) => {
    const hasNights = (one: Wished) => nightsBetween(one.startAt, one.endAt, wall) === nights + more
    return first(otherColds(plan, base, awake, hasNights)) ?? []
  })
  const atNight = asked || !plan.day?.quiet ? null : lay({ way: 'night-work' })
  return [asked, moved, ...colds.toSorted(nearestCold(plan)), atNight]
    .filter((each) => each !== null)
    .slice(0, mostWays)
}

interface Wished {
  startAt: number
  endAt: number
}

/** The nearest other moment at which the day goes: the one that the mends of a day that does not go name. */
function movedDay(
  plan: Plan,
  day: DealtDay & { number: number },
  spanSeconds: number,
  wall: WallClock,
  budget: Budget,
): DayWay[] {
  const { fixed } = plan.day ?? {}
  if (!fixed) return []
  const nearest = otherMoment(askedDay(plan, day, spanSeconds, wall).problem, budget)
  return nearest.map((mend) => movedBy(fixed.at, mend))
}

const movedBy = (at: number, mend: MomentMend): DayWay => ({
  way: 'other-moment',
  at: at + movedSeconds(mend) * 1000,
})

/** Other lengths of the last cold wait that is the same for all levels, the nearest first, with which the day lies as wanted. */
function otherColds(
  plan: Plan,
  base: Wished,
  awake: (at: number) => boolean,
  wanted: (day: Wished) => boolean,
): (DayWay & { more: number })[] {
  const cold = plan.steps.findLast((step) => isCommonCold(plan, step))
  if (!cold) return []
  const eats = plan.day?.fixed?.what === 'eat'
  return steps(coldSeconds.most / coldStepSeconds)
    .map((step) => step * coldStepSeconds)
    .filter((more) => {
      const seconds = cold.waitSeconds + more
      if (seconds < coldSeconds.least || seconds > coldSeconds.most) return false
      const day = eats
        ? { ...base, startAt: base.startAt - more * 1000 }
        : { ...base, endAt: base.endAt + more * 1000 }
      return awake(day.startAt) && awake(day.endAt) && wanted(day)
    })
    .map((more) => ({
      ...{ way: 'other-cold', stepId: cold.id, seconds: cold.waitSeconds + more, more },
    }))
}

/** The cold wait that is changed least comes first. */
function nearestCold({ steps: method }: Plan) {
  const changed = ({ way }: FoundWay) =>
    way.way === 'other-cold'
      ? Math.abs(way.seconds - (method.find(({ id }) => id === way.stepId)?.waitSeconds ?? 0))
      : 0
  return (one: FoundWay, other: FoundWay) => changed(one) - changed(other)
}

function isCommonCold(
  { factor: { acts } }: Plan,
  { id, kind, endsBy, waitSeconds }: Step,
): boolean {
  const ofFactor = 'stepId' in acts && acts.stepId === id
  return kind === 'cold-proof' && endsBy.by === 'clock' && waitSeconds > 0 && !ofFactor
}

/** 1, −1, 2, −2 … up to a number of steps either way. */
const steps = (most: number) => Array.from({ length: most }, (_, at) => [at + 1, -at - 1]).flat()

/** Whether somebody works at a moment by the quiet hours of a plan. */
function awakeAt({ day }: Plan, wall: WallClock): (at: number) => boolean {
  const quiet = day?.quiet
  if (!quiet) return () => true
  const { fromMinutes, toMinutes } = quiet
  return (at) => {
    const minutes = (at - wall.momentOf(wall.dayOf(at), 0)) / 60_000
    return fromMinutes > toMinutes
      ? minutes >= toMinutes && minutes <= fromMinutes
      : minutes <= fromMinutes || minutes >= toMinutes
  }
}

/** How many midnights of the calendar lie between two moments. */
function nightsBetween(startAt: number, endAt: number, { dayOf }: WallClock): number {
  const number = ({ year, month, day }: CalendarDay) => Date.UTC(year, month - 1, day) / 86_400_000
  return number(dayOf(endAt)) - number(dayOf(startAt))
}
