import * as Comlink from 'comlink'
import { type ClockOfPlan, firstClock, searchedClock } from '@/core/clock-plan/clock-of-plan.ts'
import { type DayCost, dayCost } from '@/core/clock-plan/day-cost.ts'
import { dayInTime } from '@/core/clock-plan/day-in-time.ts'
import { type FoundWay, waysOfDay } from '@/core/clock-plan/other-days/ways-of-day.ts'
import { plannedDay } from '@/core/clock-plan/planned-day.ts'
import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import { ageItems } from '@/core/fairness/items/age-items.ts'
import { type DayAnew, dayAnew } from '@/core/session/anew/day-anew.ts'
import type { Standing } from '@/core/session/effective-events.ts'
import { previewNextSession } from '@/core/session/preview-sessions.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { wallClock } from '@/core/wording/words/civil-moment.ts'

/** How long a better plan is sought, in milliseconds. */
const searchMilliseconds = 1000

export interface ClockAsked {
  plan: Plan
  session: Session
}

export interface NextAsked {
  plan: Plan
  seed: number
  sessions: readonly Session[]
}

/** The next session as it would be dealt, what it costs (null while a dough cannot be made) and its day as it is followed now. */
export interface NextFound extends ClockAsked {
  cost: DayCost | null
  day: DayFound
}

/** A day, with what it does to fairness in the numbers of the fairness check. */
export interface DayFound extends ClockOfPlan {
  ages: FairnessItem[]
}

export interface AnewAsked extends ClockAsked {
  events: readonly Standing[]
  now: number
}

/** A day made anew, with how many entries and which moment (UTC ms) it was asked of; null where nothing is begun or all is done. */
export interface AnewFound {
  of: number
  askedAt: number
  anew: DayAnew | null
}

const service = {
  /** The rest of a day that is being worked, made anew from its log. */
  anew({ plan, session, events, now }: AnewAsked): AnewFound {
    const wall = wallClock(plan.zone)
    const inTime = (at: number, span: number) => {
      const fixed = { what: 'start', at } as const
      return dayInTime({ ...plan, day: { ...plan.day, fixed } }, span, wall)
    }
    const day = plannedDay(plan, session)
    const anew = dayAnew({ plan, session, events, day, inTime, now })
    return { of: events.length, askedAt: now, anew }
  },
  /** The next session with the day that is followed now, at once; null while none can be dealt. */
  next({ plan, seed, sessions }: NextAsked): NextFound | null {
    const dealt = previewNextSession(plan, seed, sessions)
    if (!dealt.ok) return null
    const { session } = dealt
    const cost = dayCost(plan, session)
    const day = withAges(plan, session, firstClock(plan, session, wallClock(plan.zone)))
    return { plan, session, cost: cost.ok ? cost : null, day }
  },
  /** The best day that a second of searching finds. */
  best({ plan, session }: ClockAsked): DayFound {
    const budget = { clock: () => performance.now(), milliseconds: searchMilliseconds }
    return withAges(plan, session, searchedClock(plan, session, wallClock(plan.zone), budget))
  },
  /** Days that go and differ in kind, as far as a second of searching finds them. */
  ways({ plan, session }: ClockAsked): FoundWay[] {
    const budget = { clock: () => performance.now(), milliseconds: searchMilliseconds }
    return waysOfDay(plan, session, wallClock(plan.zone), budget)
  },
}

/** Ages as they come out once these times are kept; where no moment is fixed, as the followed day has them. */
function withAges(plan: Plan, session: Session, found: ClockOfPlan): DayFound {
  const kept = found.toKeep ? { ...plan, day: { ...plan.day, kept: found.toKeep } } : plan
  return { ...found, ages: ageItems(kept, [session]) }
}

export type ClockService = typeof service

Comlink.expose(service)
