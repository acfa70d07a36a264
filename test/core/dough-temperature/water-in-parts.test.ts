import { expect, test } from 'vitest'
import { waterPlan } from '@/core/dough-temperature/water-plan.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { aPlan, levelsOf, plainFormula, step } from '../trial/a-plan.ts'

const temperature = { wantedDoughCelsius: 24, flourCelsius: 22, roomCelsius: 22, matched: true }
const cool = { ...temperature, wantedDoughCelsius: 25, flourCelsius: 21, roomCelsius: 21 }
const bare: Plan['formula'] = { ...plainFormula, ingredients: plainFormula.ingredients.slice(0, 2) }

function planned(change: Partial<Plan> = {}) {
  const result = waterPlan(aPlan({ formula: bare, temperature, ...change }), [])
  if (!result.ok) throw new Error(result.reason)
  return result
}

test('an autolyse cools on its way, so its water is warmer; worked by hand', () => {
  const steps = [step('soak', 'autolyse', 1800), ...aPlan().steps]
  const levels = levelsOf([65, 70], 65)
  const rested = planned({ steps, levels, temperature: cool })
  expect(rested.firstWetting).toBe('autolyse')
  expect(planned().firstWetting).toBe('mix')
  // 1.65 kg: τ = 2.5 × 1.18167 = 2.95417 h, e^(−0.5/2.95417) = 0.84427; 21 + 4/0.84427 = 25.7378 before the rest;
  // (25.7378 × 7.6709 − 21 × 4.95 − 3.3547)/2.7209 = 33.123
  expect(rested.batches[0]?.waterCelsius).toBeCloseTo(33.12, 2)
  expect(rested.batches[0]?.oneWaterDoughCelsius).toBeCloseTo(25, 9)
})

const yeasted = (yeastForm: 'active-dry' | 'fresh', percent: number): Plan['formula'] => ({
  ...bare,
  ingredients: [...bare.ingredients, { id: 'y', name: 'yeast', kind: 'yeast', percent, yeastForm }],
})

test('active dry yeast gets four times its weight of warm water; the rest is cooler; nothing is past its limits', () => {
  const [batch] = planned({ formula: yeasted('active-dry', 1) }).batches
  if (!batch?.bloom) throw new Error('no bloom')
  const { grams, leastCelsius, mostCelsius, restCelsius } = batch.bloom
  expect([grams, leastCelsius, mostCelsius]).toEqual([40, 35, 43])
  // both parts together hold the heat of the whole at its temperature
  const whole = batch.waterGrams * batch.waterCelsius
  expect(40 * 39 + (batch.waterGrams - 40) * (restCelsius ?? 0)).toBeCloseTo(whole, 6)
  expect(batch.pastLimitsCelsius).toBe(0)
})

test('where fresh yeast would need hot water for cold milk, the milk is warmed instead', () => {
  const milk = { id: 'milk', name: 'Milk', kind: 'liquid' as const, percent: 30, waterPercent: 88 }
  const { ingredients, ...rest } = yeasted('fresh', 2)
  const formula = { ...rest, ingredients: [...ingredients, { ...milk, celsius: 4 }] }
  const at = { ...temperature, wantedDoughCelsius: 27 }
  const levels = levelsOf([35, 40], 35)
  const [batch] = planned({ formula, levels, temperature: at }).batches
  expect(batch?.pastLimitsCelsius).toBeGreaterThan(0)
  // 0.3 kg × 3.87568 kJ/(kg K) × 18 K no longer asked of the water: 20.929 kJ over 0.35 × 4.186
  const spared = (batch?.waterCelsius ?? 0) - (batch?.warmed?.waterCelsius ?? 0)
  expect(spared).toBeCloseTo(20.9287 / (0.35 * 4.186), 2)
  expect(batch?.warmed?.names).toEqual(['Milk'])
})

test('water of a second addition counts at its own temperature', () => {
  const [flour, water] = bare.ingredients
  if (!flour || !water) throw new Error('no formula')
  const second = { id: 'w2', name: 'Water, second', kind: 'water' as const, percent: 5 }
  const formula = { ...bare, ingredients: [flour, water, { ...second, celsius: 40 }] }
  const [batch] = planned({ formula, levels: levelsOf([65, 70], 65) }).batches
  expect(batch?.waterGrams).toBeLessThan(651)
  const flat = planned({
    formula: { ...bare, ingredients: [flour, water, second] },
    levels: levelsOf([65, 70], 65),
  }).batches[0]
  expect(batch?.waterCelsius).toBeLessThan(flat?.waterCelsius ?? 0)
  // the heat of 650 g at one temperature is that of 50 g at 40 °C and 600 g at another
  const alone = flat?.waterCelsius ?? 0
  expect(batch?.waterGrams).toBeCloseTo(600, 9)
  expect(batch?.waterCelsius).toBeCloseTo((650 * alone - 50 * 40) / 600, 6)
})
