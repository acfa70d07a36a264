import { expect, it } from 'vitest'
import { planTheDay } from '@/core/clock-plan/plan-the-day.ts'
import { problemOfDay } from '@/core/clock-plan/problem-of-day.ts'
import { heldAgainstMarks, triedMarks } from '@/core/clock-plan/tried-marks.ts'
import type { Step } from '@/core/trial/step.ts'
import { marksSentence } from '@/core/wording/plan/clock-plan-text.ts'
import { madePlan, madeStep } from '../made-plan.ts'
import { madeSession } from '../session/made-session.ts'
import { checkDay } from './search/check-day.ts'
import { countedBudget } from './search/counted-budget.ts'

/** Two doughs that rise until a mark, are shaped and baked; `stands`: how long the ripe dough may wait, seconds. */
function risingDay(stands: number, proof: Partial<Step> = {}) {
  const plan = madePlan({
    ...{ serving: 'rested', flights: 1, warmUpPiece: false, placesPerLoad: 4 },
    levels: madePlan().levels.slice(0, 2),
    steps: [
      madeStep('mix', 'mix', { handsSeconds: 600, waitSeconds: 0 }),
      madeStep('proof', 'proof', {
        ...{ handsSeconds: 0, waitSeconds: 4000, lateSeconds: stands },
        ...{ endsBy: { by: 'mark', mark: 'rise', risePercent: 80 }, ...proof },
      }),
      madeStep('shape', 'ball', { handsSeconds: 600, waitSeconds: 1200, lateSeconds: 2400 }),
      madeStep('bake', 'bake', { handsSeconds: 20, waitSeconds: 1800 }),
    ],
  })
  const { problem, parts } = problemOfDay(plan, madeSession(plan))
  const clock = planTheDay(problem, parts, countedBudget(4000))
  if (!clock) throw new Error('two doughs always fit')
  return { problem, parts, clock }
}

it('tries all marks and each dough’s alone, 15 % sooner and later, with the orders as planned', () => {
  const { problem, parts, clock } = risingDay(1800)
  const tries = triedMarks(problem, parts, clock.begins, countedBudget(4000))
  expect(tries.map(({ batchId, comes }) => [batchId === null, comes])).toEqual([
    [true, 'sooner'],
    [true, 'later'],
    [false, 'sooner'],
    [false, 'later'],
    [false, 'sooner'],
    [false, 'later'],
  ])
  // A ripe dough that may stand half an hour stands the ten minutes that a mark is off.
  expect(tries.every(({ rung }) => rung !== null)).toBe(true)
})

it('finds the marks that break a plan: shaping takes ten minutes, and a ripe dough may stand one', () => {
  const { problem, parts, clock } = risingDay(60)
  const tries = triedMarks(problem, parts, clock.begins, countedBudget(4000))
  const alone = tries.filter(({ batchId }) => batchId !== null)
  // Doughs ten minutes apart whose marks move by ten minutes one alone: their shaping meets, in one direction each.
  expect(alone.filter(({ rung }) => rung === null).length).toBeGreaterThan(0)
  // All sooner or all later together moves the day and breaks nothing.
  expect(tries.filter(({ batchId }) => batchId === null).every(({ rung }) => rung !== null)).toBe(
    true,
  )
})

it('keeps the day as it is where nothing ends by a mark, and never takes a plan that breaks more or is much longer', () => {
  const byClock = risingDay(60, { endsBy: { by: 'clock' } })
  expect(
    heldAgainstMarks(byClock.problem, byClock.parts, byClock.clock, countedBudget(4000)),
  ).toEqual({
    plan: byClock.clock,
    marks: null,
  })
  for (const stands of [60, 300, 660, 1800]) {
    const { problem, parts, clock } = risingDay(stands)
    const before = triedMarks(problem, parts, clock.begins, countedBudget(4000))
    const { plan, marks } = heldAgainstMarks(problem, parts, clock, countedBudget(4000))
    const broken = (tries: typeof before) => tries.filter(({ rung }) => rung === null).length
    expect(checkDay(problem, plan.begins).faults).toEqual([])
    expect(plan.spanSeconds).toBeLessThanOrEqual(clock.spanSeconds * 1.05)
    expect(broken(marks?.tries ?? [])).toBeLessThanOrEqual(broken(before))
    if (marks?.freeSeconds) expect(broken(marks.tries)).toBeLessThan(broken(before))
  }
})

it('says in a sentence what holds, what would break, and how long the hands stay free', () => {
  const all = { batchId: null, comes: 'later', rung: 2 } as const
  const own = { batchId: 'b2', comes: 'sooner', rung: null } as const
  const named = (batchId: string) => `dough ${batchId.slice(1)}`
  expect(marksSentence({ share: 0.15, tries: [all], freeSeconds: 600 }, named)).toBe(
    'Hands stay free for up to 10 min after each expected mark. Marks may come 15 % sooner or later, all together or one dough’s alone: every wait still holds.',
  )
  expect(
    marksSentence({ share: 0.15, tries: [{ ...all, rung: null }, own], freeSeconds: 0 }, named),
  ).toBe(
    'If marks come 15 % off, a wait passes its tolerance with all later or dough 2 sooner; the Bench then says whether to go on or to wait.',
  )
})
