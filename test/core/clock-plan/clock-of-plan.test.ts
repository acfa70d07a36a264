import { expect, it } from 'vitest'
import { planTheDay } from '@/core/clock-plan/plan-the-day.ts'
import { problemOfDay } from '@/core/clock-plan/problem-of-day.ts'
import { quietBlocks } from '@/core/clock-plan/quiet-hours.ts'
import { runSheet } from '@/core/clock-plan/run-sheet.ts'
import type { DayProblem, Placed } from '@/core/clock-plan/search/day-problem.ts'
import { civilMoment } from '@/core/wording/words/civil-moment.ts'
import { madePlan } from '../made-plan.ts'
import { madeSession } from '../session/made-session.ts'
import { randomPlan } from './random-plan.ts'
import { checkDay } from './search/check-day.ts'
import { countedBudget } from './search/counted-budget.ts'

/** Bakes that end sooner or later than the method's tolerance, however tight the day. */
function bakesBent({ tasks, waits }: DayProblem, begins: Placed) {
  const active = new Map(tasks.map(({ id, activeSeconds }) => [id, activeSeconds]))
  const ofPulls = new Set(tasks.flatMap(({ id }) => (id.endsWith(' out') ? [id] : [])))
  expect(ofPulls.size).toBeGreaterThan(0)
  return waits.filter(({ from, to, seconds, earlySeconds, lateSeconds }) => {
    const off = (begins[to] ?? 0) - (begins[from] ?? 0) - (active.get(from) ?? 0) - seconds
    return ofPulls.has(to) && (off < -earlySeconds || off > lateSeconds)
  })
}

it('plans days of many kinds so that nothing overlaps and every order holds', () => {
  let fitting = 0
  for (let seed = 1; seed <= 40; seed += 1) {
    const plan = randomPlan(seed)
    const session = madeSession(plan, [], seed)
    const { problem, parts } = problemOfDay(plan, session)
    const clock = planTheDay(problem, parts, countedBudget(300))
    if (!clock) continue
    fitting += clock.fits ? 1 : 0
    expect([seed, checkDay(problem, clock.begins).faults]).toEqual([seed, []])
    expect([seed, bakesBent(problem, clock.begins)]).toEqual([seed, []])
    const rows = runSheet(parts, clock.begins, session.dealt.doughOrder)
    expect(rows).toHaveLength(problem.tasks.length)
    expect(rows.every((row, at) => row.beginSeconds >= (rows[at - 1]?.beginSeconds ?? 0))).toBe(
      true,
    )
  }
  expect(fitting).toBeGreaterThan(4)
})

it('bakes a flight of four doughs in dough order equally old, by one pair of hands', () => {
  const plan = madePlan({ flights: 1, warmUpPiece: false })
  const dealt = madeSession(plan)
  const order = dealt.dealt.doughOrder.flatMap((batchId) =>
    dealt.pieces.filter((piece) => piece.batchId === batchId).map(({ id }) => id),
  )
  const loads = order.map((id, at) => ({ id: `load-${at}`, number: at + 1, pieceIds: [id] }))
  const session = { ...dealt, dealt: { ...dealt.dealt, loads } }
  const { problem, parts } = problemOfDay(plan, session)
  const clock = planTheDay(problem, parts, countedBudget(2000))
  // Four mixes of 480 s and four bakes of 260 s: the doughs can stay 480 s apart all day, so that their ages are equal.
  expect(clock).toMatchObject({ fits: true, rung: 1, spreadRung: 1 })
})

it('takes a night into summer time for the seven and a half hours less one that it is', () => {
  const momentOf = (day: { year: number; month: number; day: number }, minutes: number) =>
    civilMoment({ ...day, hour: Math.floor(minutes / 60), minute: minutes % 60 }, 'Europe/Vienna')
  const originAt = momentOf({ year: 2026, month: 3, day: 28 }, 18 * 60)
  const hours = { fromMinutes: 23 * 60, toMinutes: 6 * 60 + 30 }
  const blocks = quietBlocks(hours, { year: 2026, month: 3, day: 28 }, 1, {
    ...{ originAt, hands: 1, momentOf },
  })
  // From 18:00: 23:00 is 5 h on, 6:30 the next morning 12.5 h less the hour that is left out, 41 400 s.
  expect(blocks.map(({ fromSeconds, toSeconds }) => [fromSeconds, toSeconds])).toContainEqual([
    18_000, 41_400,
  ])
})
