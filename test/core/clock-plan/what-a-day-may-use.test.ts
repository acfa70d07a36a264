import { describe, expect, it } from 'vitest'
import { searchedClock } from '@/core/clock-plan/clock-of-plan.ts'
import { mendedPlan } from '@/core/clock-plan/mended-plan.ts'
import type { RunRow } from '@/core/clock-plan/run-sheet.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Step } from '@/core/trial/step.ts'
import { mendText } from '@/core/wording/plan/clock-plan-text.ts'
import { civilMoment, wallClock } from '@/core/wording/words/civil-moment.ts'
import { madePlan, madeStep } from '../made-plan.ts'
import { madeSession } from '../session/made-session.ts'
import { fourLoaves, friday, quiet, startsAt, zone } from './rested-evening.ts'
import { countedBudget } from './search/counted-budget.ts'

const wall = wallClock(zone)

function found(plan: Plan) {
  const day = searchedClock(plan, madeSession(plan), wall, countedBudget(3000))
  if (!day.clock) throw new Error('some plan is always found')
  return { ...day, clock: day.clock }
}

const morning = startsAt(friday(8))
const of = (rows: readonly RunRow[], what: RunRow['do']) => rows.filter((row) => row.do === what)
const changed = (plan: Plan, kind: Step['kind'], change: Partial<Step>): Plan => ({
  ...plan,
  steps: plan.steps.map((step) => (step.kind === kind ? { ...step, ...change } : step)),
})

/** From each pull's end to the next launch, in clock order: nothing else goes in meanwhile, as the oven holds one piece. */
function ovenEmpty(rows: readonly RunRow[]): number[] {
  const pulls = of(rows, 'pull')
  return of(rows, 'launch')
    .slice(1)
    .map((launch, at) => launch.beginSeconds - (pulls[at]?.endSeconds ?? 0))
}

describe('the oven’s own time', () => {
  it('recovers after each load: a minute where nothing is said, as the kitchen says, or as the bake itself says', () => {
    const least = (plan: Plan) => Math.min(...ovenEmpty(found(plan).rows))
    const plan = fourLoaves(morning)
    expect(least(plan)).toBeGreaterThanOrEqual(60)
    const asKitchen = { ...plan, day: { ...morning, recoverySeconds: 300 } }
    expect(least(asKitchen)).toBeGreaterThanOrEqual(300)
    expect(least(changed(asKitchen, 'bake', { recoverySeconds: 600 }))).toBeGreaterThanOrEqual(600)
  })

  it('is brought from one temperature to another at its pace, up and down', () => {
    const acts = { on: 'bake-temperature' as const, stepId: 'bake' }
    const plan = fourLoaves({
      ...morning,
      oven: { heatSecondsPerKelvin: 12, coolSecondsPerKelvin: 30 },
    })
    const heats = [200, 230, 210]
    const levels = heats.map((value) => ({
      ...{ id: `lv-${value}`, value, label: `${value}`, control: value === 200 },
    }))
    const factor = { ...plan.factor, unitOfMeasure: '°C', splitsAt: 'oven' as const, acts }
    const hot = { ...plan, factor, levels, doughs: 'apart' as const }
    const session = madeSession(hot)
    const { rows } = found(hot)
    const heatOf = ({ unitIds }: RunRow) =>
      Number(session.pieces.find(({ id }) => unitIds.includes(id))?.levelId.slice(3)) ||
      Number(session.batches.find(({ id }) => unitIds.includes(id))?.levelId?.slice(3))
    const [launches, pulls] = [of(rows, 'launch'), of(rows, 'pull')]
    for (const [at, launch] of launches.entries()) {
      const before = pulls[at - 1]
      if (!before) continue
      const kelvin = heatOf(launch) - heatOf(before)
      // 12 s for each degree up, 30 s for each down.
      const needed = kelvin > 0 ? kelvin * 12 : -kelvin * 30
      expect(needed).toBeGreaterThan(0)
      expect(launch.beginSeconds - before.endSeconds).toBeGreaterThanOrEqual(needed)
    }
  })
})

describe('hands and room', () => {
  /** How many rows of some steps go on at once at the most. */
  const atOnce = (rows: readonly RunRow[], ...stepIds: string[]) => {
    const own = rows.filter(({ stepId }) => stepIds.includes(stepId))
    return Math.max(
      ...own.map(
        ({ beginSeconds: at }) =>
          own.filter((row) => row.beginSeconds <= at && at < row.endSeconds).length,
      ),
    )
  }

  /** Two pairs of hands; doughs are folded for ten minutes and, soon after, shaped for ten. */
  const shaped = (one: Partial<Step>) =>
    fourLoaves(morning, {
      ...{ pairsOfHands: 2, placesPerLoad: 4 },
      steps: [
        madeStep('mix', 'mix', { handsSeconds: 300, waitSeconds: 900 }),
        madeStep('fold', 'fold', { handsSeconds: 600, waitSeconds: 300, ...one }),
        madeStep('shape', 'ball', { handsSeconds: 600, waitSeconds: 3600, ...one }),
        madeStep('bake', 'bake', { handsSeconds: 30, waitSeconds: 1500, uses: ['hands', 'oven'] }),
      ],
    })

  it('two pairs of hands work at two doughs at once, but not where one person is to do it for all', () => {
    const two = found(shaped({}))
    expect(atOnce(two.rows, 'fold', 'shape')).toBe(2)
    const one = found(shaped({ samePerson: true }))
    expect(atOnce(one.rows, 'fold', 'shape')).toBe(1)
    expect(one.clock.spanSeconds).toBeGreaterThan(two.clock.spanSeconds)
  })

  /** Four doughs chilled for an hour, of which the fridge holds so many. */
  const chilled = (fridgePlaces: number) =>
    madePlan({
      ...{ zone, serving: 'rested', flights: 1, warmUpPiece: false, placesPerLoad: 1 },
      day: { ...morning, fridgePlaces },
      steps: [
        madeStep('mix', 'mix', { handsSeconds: 300, waitSeconds: 600, lateSeconds: 600 }),
        madeStep('cold', 'cold-proof', {
          ...{ handsSeconds: 60, waitSeconds: 3600, earlySeconds: 600, lateSeconds: 600 },
        }),
        madeStep('bake', 'bake', { handsSeconds: 20, waitSeconds: 240 }),
      ],
    })

  it('a fridge holds no more than it has room for, and one place more is a mend where that stops the day', () => {
    const inCold = ({ rows }: ReturnType<typeof found>) => {
      const [into, out] = [rows.filter(({ stepId }) => stepId === 'cold'), of(rows, 'launch')]
      const stays = into.map((row) => [
        row.beginSeconds,
        out.find(({ batchId }) => batchId === row.batchId)?.beginSeconds ?? 0,
      ])
      return Math.max(
        ...stays.map(
          ([at = 0]) => stays.filter(([from = 0, to = 0]) => from <= at && at < to).length,
        ),
      )
    }
    const roomy = found(chilled(4))
    expect([roomy.clock.fits, inCold(roomy)]).toEqual([true, 4])
    const three = found(chilled(3))
    expect(inCold(three)).toBeLessThanOrEqual(3)
    expect(roomy.clock.spanSeconds).toBeLessThan(2 * 3600)
    expect(three.clock.spanSeconds).toBeGreaterThan(2 * 3600)
    expect(three.clock.spanSeconds).toBeLessThan(2 * 3600 + 20 * 60)
    // Begun at 8:00, doughs chilled two by two are all done before 10:20; one by one they take more than four hours.
    const start = friday(8)
    const early = { ...quiet, fromMinutes: 10 * 60 + 20 }
    const short = { ...chilled(1), day: { ...startsAt(start), quiet: early, fridgePlaces: 1 } }
    const { clock } = found(short)
    const mend = clock.mends.find((one) => one.mend === 'one-more' && one.resource === 'fridge')
    expect(mend && mendText(mend, short)).toBe('Make room for one more in the fridge.')
    expect(mend && mendedPlan(short, mend)?.day?.fridgePlaces).toBe(2)
  })
})

describe('a night in which the clock changes', () => {
  /** Mixed before the night, cold for twelve hours of elapsed time good to ten minutes, eaten at half past nine. */
  const overnight = (year: number, month: number, day: number) => {
    const at = civilMoment({ year, month, day, hour: 9, minute: 30 }, zone)
    const steps = [
      madeStep('mix', 'mix', { handsSeconds: 300 }),
      madeStep('cold', 'cold-proof', {
        ...{
          handsSeconds: 0,
          waitSeconds: 12 * 3600,
          earlySeconds: 600,
          lateSeconds: 600,
          uses: [],
        },
      }),
      madeStep('bake', 'bake', { handsSeconds: 20, waitSeconds: 240 }),
    ]
    const wishes = { fixed: { what: 'eat' as const, at }, quiet }
    return { at, plan: { ...fourLoaves(wishes), steps } }
  }

  // Vienna: clocks go forward in the night to 29 March 2026 and back in the night to 25 October 2026.
  it.each([
    ['forward', [2026, 3, 29], -1],
    ['back', [2026, 10, 25], 1],
    ['not at all', [2026, 12, 6], 0],
  ] as const)(
    'set %s, the cold is twelve hours by a watch, and the mix lies where it then must',
    (_, [year, month, day], hours) => {
      const { at, plan } = overnight(year, month, day)
      const { clock, rows, originAt } = found(plan)
      expect(clock.fits).toBe(true)
      const begun = (originAt ?? 0) + (rows[0]?.beginSeconds ?? 0) * 1000
      const elapsed = (at - begun) / 3600_000
      expect(elapsed).toBeGreaterThan(12)
      expect(elapsed).toBeLessThan(13)
      // By the wall clock the evening before, the same day mixes an hour sooner in spring and an hour later in autumn.
      const { hour = 0, minute = 0 } = wall.dayOf(begun) as { hour?: number; minute?: number }
      const wallHours = 24 - (hour + minute / 60) + 9.5
      expect(wallHours - elapsed).toBeCloseTo(-hours, 1)
      expect(hour * 60 + minute).toBeLessThan(quiet.fromMinutes)
    },
  )
})

it('rested pieces of two loads that are cut once for all are cut at one moment, each within its cooling', () => {
  const plan = changed(fourLoaves(morning, { placesPerLoad: 2 }), 'cut', {
    per: 'batch',
    once: true,
  })
  const { rows, clock, waits } = found(plan)
  expect(clock.fits).toBe(true)
  expect(rows.filter(({ stepId }) => stepId === 'cut')).toHaveLength(1)
  expect(waits.find(({ stepId }) => stepId === 'cool')?.off).toEqual([])
})
