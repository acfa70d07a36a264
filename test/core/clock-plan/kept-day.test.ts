import { expect, it } from 'vitest'
import { searchedClock } from '@/core/clock-plan/clock-of-plan.ts'
import { dayInTime, laidInTime } from '@/core/clock-plan/day-in-time.ts'
import { mendedPlan } from '@/core/clock-plan/mended-plan.ts'
import { plannedDay } from '@/core/clock-plan/planned-day.ts'
import { problemOfDay } from '@/core/clock-plan/problem-of-day.ts'
import { agenda } from '@/core/session/agenda.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { undatedPlan } from '@/core/trial/undated-plan.ts'
import { wallClock } from '@/core/wording/words/civil-moment.ts'
import { madePlan, madeStep } from '../made-plan.ts'
import { madeSession } from '../session/made-session.ts'
import { checkDay } from './search/check-day.ts'
import { countedBudget } from './search/counted-budget.ts'

const zone = 'Europe/Vienna'
const wall = wallClock(zone)
// 5 December 2026, 18:00 in Vienna.
const eatAt = Date.UTC(2026, 11, 5, 17)

function eaten(change: Partial<Plan> = {}): Plan {
  const day = {
    fixed: { what: 'eat' as const, at: eatAt },
    quiet: { fromMinutes: 1380, toMinutes: 390 },
  }
  return madePlan({ zone, flights: 1, warmUpPiece: false, day, ...change })
}

it('ends when people eat, works in no quiet hour, and is followed by the Bench once it is kept', () => {
  const plan = eaten()
  const session = madeSession(plan)
  const found = searchedClock(plan, session, wall, countedBudget(400))
  expect(found.nothing).toBe(false)
  const { originAt, rows, toKeep } = found
  if (originAt === null || !toKeep) throw new Error('a moment is fixed')
  expect(originAt + Math.max(...rows.map(({ endSeconds }) => endSeconds)) * 1000).toBe(eatAt)
  for (const { beginSeconds, endSeconds } of rows.filter(
    (row) => row.endSeconds > row.beginSeconds,
  )) {
    const { hour, minute } = wall.dayOf(originAt + beginSeconds * 1000) as {
      hour: number
      minute: number
    }
    expect([beginSeconds, endSeconds, hour * 60 + minute >= 390 && hour < 23]).toEqual([
      beginSeconds,
      endSeconds,
      true,
    ])
  }
  const kept = { ...plan, day: { ...plan.day, kept: toKeep } }
  const day = plannedDay(kept, session)
  expect(day.startAt).toBe(originAt + (rows[0]?.beginSeconds ?? 0) * 1000)
  expect(agenda(session, kept, [], eatAt - 86_400_000)[0]?.dueAt).toBe(day.startAt)
  expect(searchedClock(kept, session, wall, countedBudget(400)).kept).toBe(true)
})

it('holds for the very day it was found for: another wait, wish or deal makes the quick first plan anew', () => {
  const plan = eaten()
  const session = madeSession(plan)
  const { toKeep } = searchedClock(plan, session, wall, countedBudget(400))
  if (!toKeep) throw new Error('a moment is fixed')
  const kept = { ...plan, day: { ...plan.day, kept: toKeep } }
  const longer = kept.steps.map((step) =>
    step.id === 'rest' ? { ...step, waitSeconds: 2400 } : step,
  )
  expect(plannedDay({ ...kept, steps: longer }, session).startAt).toBeNull()
  const later = { what: 'eat' as const, at: eatAt + 3_600_000 }
  expect(plannedDay({ ...kept, day: { ...kept.day, fixed: later } }, session).startAt).toBeNull()
  expect(undatedPlan(kept).day).toEqual({ quiet: plan.day?.quiet })
})

it('does once what is done for all, and keeps doughs in the cold within the room there is', () => {
  const steps = [
    madeStep('feed', 'feed', { once: true, handsSeconds: 300, waitSeconds: 7200 }),
    ...madePlan().steps.slice(0, 1),
    madeStep('cold', 'cold-proof', { handsSeconds: 60, waitSeconds: 36_000, lateSeconds: 3600 }),
    ...madePlan().steps.slice(3),
  ]
  const plan = madePlan({ steps, flights: 1, warmUpPiece: false, day: { fridgePlaces: 4 } })
  const session = madeSession(plan)
  const { problem, parts } = problemOfDay(plan, session)
  const feeds = parts.filter(({ step }) => step.id === 'feed')
  expect(feeds.map(({ activeSeconds, unitIds }) => [activeSeconds, unitIds.length])).toEqual([
    [300, 4],
  ])
  expect(problem.stays.filter(({ resource }) => resource === 'fridge')).toHaveLength(4)
  const day = plannedDay(plan, session)
  expect(
    new Set(day.tasks.flatMap((task) => (task.step.id === 'feed' ? [task.beginSeconds] : []))),
  ).toEqual(new Set([0]))
  expect(checkDay(problem, day.begins).faults).toEqual([])
})

it('blocks a helper outside of the hours, and nobody twice at night', () => {
  const helper = { fromAt: eatAt - 2 * 3_600_000, untilAt: eatAt - 3_600_000 }
  const plan = eaten({ day: { ...eaten().day, helpers: [helper] } })
  const { problem } = problemOfDay(plan, madeSession(plan))
  const inTime = dayInTime(plan, 10_000, wall)
  const { blocks } = laidInTime(problem, inTime)
  const taken = (at: number) =>
    blocks
      .filter(({ fromSeconds, toSeconds }) => fromSeconds <= at && at < toSeconds)
      .reduce((sum, { count }) => sum + count, 0)
  const secondsTo = (at: number) => (at - (inTime.originAt ?? 0)) / 1000
  expect(problem.capacities.hands).toBe(2)
  expect(taken(secondsTo(eatAt - 1.5 * 3_600_000))).toBe(0)
  expect(taken(secondsTo(eatAt - 3 * 3_600_000))).toBe(1)
  // 3:00 at night: both are away, and no more than both.
  expect(taken(secondsTo(eatAt - 15 * 3_600_000))).toBe(2)
})

it('makes a mend a change of the plan where it is one', () => {
  const plan = eaten()
  expect(mendedPlan(plan, { mend: 'later-end', seconds: 61 })?.day?.fixed?.at).toBe(eatAt + 300_000)
  expect(mendedPlan(plan, { mend: 'one-more', resource: 'oven' })?.placesPerLoad).toBe(2)
  expect(mendedPlan(plan, { mend: 'one-more', resource: 'mixer' })?.day?.mixers).toBe(2)
  const rest = mendedPlan(plan, { mend: 'same-for-all', step: 'rest', seconds: -120 })
  expect(rest?.steps.find(({ id }) => id === 'rest')?.waitSeconds).toBe(1680)
  expect(mendedPlan(plan, { mend: 'free-oven-order' })).toBeNull()
})
