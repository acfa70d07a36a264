import { describe, expect, test } from 'vitest'
import { learnedMixingWork, workForPlan } from '@/core/learned/learned-mixing-work.ts'
import { mixingDay } from './mixing-day.ts'

/** The one way to mix that the trials used. */
function byHand(...trials: Parameters<typeof learnedMixingWork>[0][number][]) {
  const [work] = learnedMixingWork(trials)
  if (!work) throw new Error('no dough was mixed')
  return work
}

const at65 = { hydration: 65, waterCelsius: 30, doughCelsius: 31.7 }

/** Wetting heat of flour of 13.5 % moisture, kJ/kg: 100 · e^(−13.6 · 13.5/86.5) · 0.865. */
const wetting = 100 * Math.exp((-13.6 * 13.5) / 86.5) * 0.865

// Heat capacities 1.75, 3.2 (the room) and 4.186 kJ/(kg K), 1 kg of flour at 20 °C, 0.65 kg of water at 30 °C:
// e = 31.7 · (4.95 + 0.65 · 4.186) − 4.95 · 20 − 0.65 · 4.186 · 30 − q = 243.16753 − 180.627 − q = 62.54053 − q.
const at65Work = 62.54053 - wetting
describe('one dough', () => {
  test('its work follows from the balance', () => {
    const work = byHand(mixingDay('a', [at65]))
    expect(work.ok && work.kilojoulesPerKilogram).toBeCloseTo(at65Work, 8)
    expect(work).toMatchObject({
      ...{ ok: true, batches: 1, sdKilojoulesPerKilogram: null, slope: null, trialIds: ['a'] },
      mixedBy: { by: 'hand', way: 'hand' },
    })
  })

  // 0.64 kg of water: 0.01 · 4.186 · 1.7 = 0.071162 kJ less.
  test('by the water as weighed', () => {
    const work = byHand(mixingDay('a', [{ ...at65, waterGrams: 640 }]))
    expect(work.ok && work.kilojoulesPerKilogram).toBeCloseTo(at65Work - 0.071162, 8)
  })

  // Flour two degrees warmer brings 2 · 1.75 = 3.5 kJ that the mixer need not.
  test('by the flour as read', () => {
    const work = byHand(mixingDay('a', [{ ...at65, flourCelsius: 22 }]))
    expect(work.ok && work.kilojoulesPerKilogram).toBeCloseTo(at65Work - 3.5, 8)
  })
})

describe('several doughs', () => {
  const near = { hydration: 65, waterCelsius: 30, doughCelsius: 31.6 }

  // A tenth of a degree is 0.76709 kJ: the mean half of it lower, sd 0.76709 / √2.
  test('their mean and spread, over the trials', () => {
    const work = byHand(mixingDay('a', [at65]), mixingDay('b', [near]))
    expect(work).toMatchObject({ ok: true, batches: 2, trialIds: ['a', 'b'] })
    expect(work.ok && work.kilojoulesPerKilogram).toBeCloseTo(at65Work - 0.383545, 8)
    expect(work.ok && work.sdKilojoulesPerKilogram).toBeCloseTo(0.76709 / Math.SQRT2, 8)
  })

  // With work 10 at 60 %, 11 at 62.5 % and so on the dough comes out at (99 + w · 30 + q + e) / (4.95 + w).
  const sloping = [60, 62.5, 65, 67.5, 70].map((hydration, index) => {
    const water = (hydration / 100) * 4.186
    const doughCelsius = (99 + water * 30 + wetting + 10 + index) / (4.95 + water)
    return { hydration, waterCelsius: 30, doughCelsius }
  })

  test('five doughs carry a slope, which a plan of the same kind uses', () => {
    const day = mixingDay('a', sloping)
    const work = learnedMixingWork([day])
    expect(work[0]?.ok && work[0].slope?.perLevel).toBeCloseTo(0.4, 8)
    expect(work[0]?.ok && work[0].slope?.meanLevel).toBeCloseTo(65, 8)
    const [plan] = day.plans
    if (!plan) throw new Error('a day has a plan')
    expect(workForPlan(work, plan, day.kitchen)?.slope?.perLevel).toBeCloseTo(0.4, 8)
    const salty = {
      ...plan,
      factor: { ...plan.factor, acts: { on: 'salt' as const, ingredientId: 'water' } },
    }
    expect(workForPlan(work, salty, day.kitchen)).toMatchObject({ batches: 5, slope: null })
  })

  test('levels of unlike factors are put on no line', () => {
    const other = mixingDay('b', [at65], {
      factor: {
        ...{ name: 'Turns', unitOfMeasure: '', splitsAt: 'mix', held: 'flour' },
        acts: { on: 'own' },
      },
    })
    expect(byHand(mixingDay('a', sloping), other)).toMatchObject({ batches: 6, slope: null })
  })

  test('a mixer learns for itself, and not for hands', () => {
    const machine = mixingDay('a', [at65], { kitchenIds: ['mixer-1'] })
    const work = learnedMixingWork([machine, mixingDay('b', [at65])])
    expect(work.map(({ mixedBy }) => mixedBy)).toEqual([
      { by: 'mixer', mixerId: 'mixer-1', way: 'hand' },
      { by: 'hand', way: 'hand' },
    ])
    // The steel bowl, 0.9 kg at 0.5 kJ/(kg K), was warmed from 20 to 31.7 °C, and takes 0.8 kJ/(kg K) off the room's share:
    // (0.45 − 0.8) · 11.7 = −4.095 kJ.
    expect(work[0]?.ok && work[0].kilojoulesPerKilogram).toBeCloseTo(at65Work - 4.095, 8)
    expect(work[1]?.ok && work[1].kilojoulesPerKilogram).toBeCloseTo(at65Work, 8)
  })
})

describe('doughs that tell nothing', () => {
  test('each with its reason', () => {
    const work = byHand(
      mixingDay('a', [
        { hydration: 60, waterCelsius: 30 },
        { hydration: 65, doughCelsius: 31.7 },
        { ...at65, hydration: 70, readAfter: 26 },
      ]),
    )
    expect(work).toMatchObject({ ok: false, reason: 'no-logged-mix' })
    expect(work.untold).toEqual([
      { reason: 'dough-not-read', batches: 2 },
      { reason: 'water-not-read', batches: 1 },
    ])
  })

  test('a reading within a quarter of an hour of the mix counts', () => {
    expect(byHand(mixingDay('a', [{ ...at65, readAfter: 25 }])).ok).toBe(true)
  })

  test('a trial that keeps its codes teaches nothing yet', () => {
    const day = mixingDay('a', [at65])
    const [first] = day.events
    if (!first) throw new Error('a day has events')
    const served = { ...first, id: 'served', count: 99, kind: 'served' as const }
    const about = { kind: 'serving' as const, id: 'serving-1' }
    const { kind: _, ...stamps } = served
    expect(
      learnedMixingWork([
        {
          ...day,
          events: [...day.events, { ...stamps, kind: 'served', about }] as typeof day.events,
        },
      ]),
    ).toEqual([])
  })
})
