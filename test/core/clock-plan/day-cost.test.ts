import { describe, expect, it } from 'vitest'
import { dayCost } from '@/core/clock-plan/day-cost.ts'
import { madePlan } from '../made-plan.ts'
import { madeSession } from '../session/made-session.ts'

function cost(change = {}) {
  const plan = madePlan(change)
  const answer = dayCost(plan, madeSession(plan))
  if (!answer.ok) throw new Error(answer.reason)
  return answer
}

describe('dayCost', () => {
  it('adds up a day of four doughs and nine pieces by hand', () => {
    const day = cost()
    // Dough of 400 g flour at 57, 61.5, 66.4 and 72 % water, 2 % salt and 0.5 % yeast:
    // 400 × (4 × 1.025 + 0.57 + 0.615 + 0.664 + 0.72) = 400 × 6.669 = 2667.6 g.
    expect(day.doughGrams).toBeCloseTo(2667.6, 6)
    expect([day.batches, day.tubs, day.pieces]).toEqual([4, 4, 9])
    // Hands: mix 4 × 480 + fold 4 × 2 × 120 + ball 9 × 60 + bake 9 × 20 = 1920 + 960 + 540 + 180 = 3600 s.
    expect(day.handsSeconds).toBe(3600)
    // Nine loads of one piece, 260 s each.
    expect([day.loads, day.ovenSeconds]).toEqual([9, 2340])
    // Eight servings and the warm-up: nine samples, more than six.
    expect([day.samplesPerSitting, day.tooManySamples]).toEqual([9, true])
    // Pieces of 2667.6 / 9 = 296 g for three mouths: a full bite of 20 g of each.
    expect(day.gramsPerMouth).toBeCloseTo(180, 6)
    // To the oven 480 + 1800 + 2 × 1320 + 60 = 4980 s. The warm-up goes first and is of the third dough, which cannot be
    // begun before 2 × 480 s of mixing; then nine loads of 260 s, and between them 15 s for a pull and 60 s until the oven is as
    // hot again: 960 + 4980 + 9 × 260 + 8 × 75 = 8880 s at least. One pair of hands, and equal waits in a flight, take minutes.
    expect(day.spanSeconds).toBeGreaterThanOrEqual(8880)
    expect(day.spanSeconds).toBeLessThanOrEqual(8880 + 300)
    expect(day.fridgePlaces).toBe(0)
  })

  it('does not warn at six samples, and counts tell-apart samples', () => {
    const six = cost({ flights: 1, warmUpPiece: true, tellApart: null })
    expect([six.samplesPerSitting, six.tooManySamples]).toEqual([5, false])
    const sets = cost({
      flights: 1,
      tellApart: { test: 'triangle', levelIds: ['lv-low', 'lv-top'] },
    })
    expect([sets.samplesPerSitting, sets.tooManySamples]).toEqual([8, true])
  })

  it('asks the hands once for a step that is done once for all doughs', () => {
    const { steps } = madePlan()
    const once = (step: (typeof steps)[number]) =>
      step.kind === 'mix' || step.kind === 'fold' ? { ...step, once: true as const } : step
    // Of the 3600 s above: mix 480 in place of 4 × 480, folds 2 × 120 in place of 4 × 2 × 120: 3600 − 1440 − 720 = 1440 s.
    expect(cost({ steps: steps.map(once) }).handsSeconds).toBe(1440)
  })

  it('takes the shared steps of one dough once', () => {
    const plan = madePlan()
    const factor = {
      name: 'bake time',
      unitOfMeasure: 's',
      acts: { on: 'bake-time' as const, stepId: 'bake' },
      splitsAt: 'oven' as const,
      held: 'piece' as const,
    }
    const levels = [180, 240].map((value) => ({
      id: `lv-${value}`,
      value,
      label: `${value}`,
      control: false,
    }))
    const day = cost({ factor, levels, doughs: 'one', warmUpPiece: false, formula: plan.formula })
    // Mix 480 + folds 240 once, balls 4 × 60, bakes 4 × 20: 1040 s. Loads of 200 and 260 s: 4 × 230 = 920 s.
    expect(day.handsSeconds).toBe(1040)
    expect(day.ovenSeconds).toBe(920)
    expect(day.batches).toBe(1)
  })

  const ovenFactor = (on: 'bake-temperature' | 'bake-time') => ({
    ...{
      name: 'oven',
      unitOfMeasure: on === 'bake-time' ? 's' : '°C',
      acts: { on, stepId: 'bake' },
    },
    ...{ splitsAt: 'oven' as const, held: 'piece' as const },
  })

  it('asks one load at least for each oven temperature, but not for each bake time', () => {
    const change = { doughs: 'one' as const, flights: 1, warmUpPiece: false, placesPerLoad: 4 }
    const hot = cost({ ...change, factor: ovenFactor('bake-temperature') })
    // Four temperatures, four loads of 20 + 240 s, though all four pieces would fit at once.
    expect([hot.loads, hot.ovenSeconds]).toEqual([4, 1040])
    expect(cost({ ...change, factor: ovenFactor('bake-time') }).loads).toBe(1)
    // Two flights, even rested and with room for both, go through the temperatures twice.
    const two = { ...change, flights: 2, serving: 'rested' as const, placesPerLoad: 8 }
    expect(cost({ ...two, factor: ovenFactor('bake-temperature') }).loads).toBe(8)
    expect(cost({ ...two, factor: ovenFactor('bake-time') }).loads).toBe(1)
  })
})
