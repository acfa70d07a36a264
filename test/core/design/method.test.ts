import { describe, expect, it } from 'vitest'
import { bakesInDoughOrder, staggerSeconds } from '@/core/clock-plan/bake-order.ts'
import { ovenLoads } from '@/core/clock-plan/oven-loads.ts'
import { splitIndex } from '@/core/clock-plan/split-index.ts'
import { letterAt } from '@/core/design/letters.ts'
import { mixedApart, unitOf } from '@/core/trial/doughs.ts'
import type { ActsOn, Factor } from '@/core/trial/factor.ts'
import { piecesAsked } from '@/core/trial/pieces-asked.ts'
import { stepAtLevel } from '@/core/trial/step-at-level.ts'
import { madePlan, madeStep } from '../made-plan.ts'

const factor = (acts: ActsOn, unitOfMeasure: string): Factor => ({
  name: 'factor',
  unitOfMeasure,
  acts,
  splitsAt: 'proof',
  held: 'piece',
})
const level = (value: number | null) => ({ id: 'lv', value, label: 'one', control: false })

describe('ovenLoads', () => {
  const flights = [
    ['a', 'b', 'c', 'd', 'e'],
    ['e', 'd', 'c', 'b', 'a'],
  ]

  it('splits a flight evenly: five pieces in three places as three and two', () => {
    expect(ovenLoads({ warmUp: 'w', flights, placesPerLoad: 3, asBaked: true })).toEqual([
      ['w'],
      ['a', 'b', 'c'],
      ['d', 'e'],
      ['e', 'd', 'c'],
      ['b', 'a'],
    ])
  })

  it('puts whole flights together only when they rest afterwards', () => {
    const rested = ovenLoads({ warmUp: null, flights, placesPerLoad: 10, asBaked: false })
    expect(rested).toEqual([flights.flat()])
    expect(ovenLoads({ warmUp: null, flights, placesPerLoad: 10, asBaked: true })).toEqual(flights)
    expect(ovenLoads({ warmUp: null, flights, placesPerLoad: 9, asBaked: false })).toEqual(flights)
  })

  it('never lets pieces of two oven temperatures share a load', () => {
    // a and b at 200 °C, c to e at 250 °C: in places for ten, two loads a flight, whether eaten hot or rested.
    const heatOf = (piece: string) => (piece < 'c' ? '200' : '250')
    for (const asBaked of [true, false])
      expect(ovenLoads({ warmUp: null, flights, placesPerLoad: 10, asBaked, heatOf })).toEqual([
        ['a', 'b'],
        ['c', 'd', 'e'],
        ['e', 'd', 'c'],
        ['b', 'a'],
      ])
  })
})

describe('stepAtLevel', () => {
  const proof = madeStep('proof', 'proof', { waitSeconds: 100 })

  it("reads a time in the factor's own unit", () => {
    const at = (unit: string, on: 'proof-time' | 'cold-hours', value: number) =>
      stepAtLevel(factor({ on, stepId: 'proof' }, unit), proof, level(value))?.waitSeconds
    expect(at('min', 'proof-time', 45)).toBe(2700)
    expect(at('h', 'proof-time', 1.5)).toBe(5400)
    expect(at('', 'proof-time', 45)).toBe(2700)
    expect(at('cold', 'cold-hours', 24)).toBe(86_400)
    expect(at('days', 'cold-hours', 2)).toBe(172_800)
  })

  it('sets folds and oven, leaves out what a choice leaves out, and touches nothing else', () => {
    const fold = madeStep('fold', 'fold', { repeats: 3 })
    const folds = factor({ on: 'fold-count', stepId: 'fold' }, 'folds')
    expect(stepAtLevel(folds, fold, level(2))?.repeats).toBe(2)
    expect(stepAtLevel(folds, fold, level(0))).toBeNull()
    const hot = factor({ on: 'bake-temperature', stepId: 'bake' }, '°C')
    expect(stepAtLevel(hot, madeStep('bake', 'bake'), level(280))?.celsius).toBe(280)
    // 482 °F = (482 − 32) / 1.8 = 250 °C.
    const fahrenheit = { ...hot, unitOfMeasure: '°F' }
    expect(stepAtLevel(fahrenheit, madeStep('bake', 'bake'), level(482))?.celsius).toBeCloseTo(
      250,
      10,
    )
    const without = {
      ...level(null),
      changes: [{ what: 'step' as const, stepId: 'proof', done: false }],
    }
    expect(stepAtLevel(factor({ on: 'choice' }, ''), proof, without)).toBeNull()
    expect(stepAtLevel(folds, proof, level(2))).toBe(proof)
    expect(stepAtLevel(folds, fold, null)).toBe(fold)
  })
})

describe('where the lines run apart', () => {
  const steps = [
    madeStep('mix', 'mix'),
    madeStep('bulk', 'proof'),
    madeStep('divide', 'divide'),
    madeStep('last', 'proof'),
    madeStep('bake', 'bake'),
  ]
  const index = (splitsAt: Factor['splitsAt'], acts: ActsOn = { on: 'own' }) =>
    splitIndex(madePlan({ steps, factor: { ...factor(acts, ''), splitsAt } }))

  it("finds the factor's own step, else the first of its kind after the dividing", () => {
    expect([index('mix'), index('divide'), index('proof'), index('oven')]).toEqual([0, 2, 3, 4])
    expect(index('proof', { on: 'proof-time', stepId: 'bulk' })).toBe(1)
    expect(
      splitIndex(madePlan({ steps: steps.slice(0, 1), factor: factor({ on: 'own' }, '') })),
    ).toBe(1)
  })

  it('names the unit', () => {
    const late = { factor: factor({ on: 'own' }, ''), doughs: 'one' as const }
    expect(unitOf(late)).toBe('piece')
    expect(unitOf({ ...late, doughs: 'apart' })).toBe('batch')
    expect(mixedApart({ ...late, factor: { ...late.factor, splitsAt: 'mix' } })).toBe(true)
  })
})

it('counts pieces: four levels, two flights, one spare each and a warm-up', () => {
  // 4 × 2 + 4 × 1 + 1 = 13; the control's dough gives 2 + 1 + 1 = 4.
  expect(piecesAsked(madePlan({ sparePieces: 1 }))).toEqual({
    counted: 8,
    spare: 4,
    warmUp: 1,
    total: 13,
    perBatch: 4,
  })
})

it('bakes in dough order only while the wait is within ten staggers', () => {
  // Stagger: the mix holds the hands 480 s. From mix to oven 4980 s; 4800 s is the limit.
  expect(staggerSeconds(madePlan())).toBe(480)
  expect(bakesInDoughOrder(madePlan())).toBe(false)
  const quicker = madePlan().steps.map((step) =>
    step.id === 'rest' ? { ...step, waitSeconds: 1620 } : step,
  )
  expect(bakesInDoughOrder(madePlan({ steps: quicker }))).toBe(true)
})

it('gives a piece the oven whole where each level has a temperature of its own', () => {
  // In loads of four a piece takes (20 + 2400) / 4 = 605 s of the oven; alone at its temperature 2420 s.
  const steps = madePlan().steps.map((step) =>
    step.kind === 'bake' ? { ...step, waitSeconds: 2400 } : step,
  )
  expect(staggerSeconds(madePlan({ steps, placesPerLoad: 4 }))).toBe(605)
  const hot = factor({ on: 'bake-temperature', stepId: 'bake' }, '°C')
  expect(staggerSeconds(madePlan({ steps, placesPerLoad: 4, factor: hot }))).toBe(2420)
})

it('letters tubs A to Z, then AA to ZZ, and no further', () => {
  expect([0, 25, 26, 27, 52, 701].map(letterAt)).toEqual(['A', 'Z', 'AA', 'AB', 'BA', 'ZZ'])
  expect(() => letterAt(702)).toThrow()
})
