import { expect, test } from 'vitest'
import { degreeWords } from '@/app/kit/field/temperature-words.ts'
import { waterRows } from '@/app/plan/panels/water-rows.ts'
import { waterPlan } from '@/core/dough-temperature/water-plan.ts'
import type { Fridge, KitchenThing, Tap } from '@/core/kitchen/kitchen-record.ts'
import { waterWarnings } from '@/core/wording/weighing/water-text.ts'
import { aPlan, levelsOf, plainFormula } from '../../../core/trial/a-plan.ts'

const tap: Tap = { id: 't', kind: 'tap', name: 'tap', coldestCelsius: 18, warmestCelsius: 45 }
const fridge: Fridge = { id: 'f', kind: 'fridge', name: 'fridge', celsius: 4, freezerCelsius: -18 }
const temperature = {
  wantedDoughCelsius: 8,
  flourCelsius: 18,
  roomCelsius: 18,
  matched: true,
  mixingKilojoulesPerKilogram: 0,
}
const formula = { ...plainFormula, ingredients: plainFormula.ingredients.slice(0, 2) }

function cold(things: KitchenThing[], matched = true, wantedDoughCelsius = 8) {
  const plan = aPlan({
    ...{ formula, levels: levelsOf([70, 90], 70), kitchenIds: things.map(({ id }) => id) },
    temperature: { ...temperature, matched, wantedDoughCelsius },
  })
  const water = waterPlan(plan, things)
  if (!water.ok) throw new Error(water.reason)
  return { water, rows: waterRows(water, matched, 'celsius') }
}

// By the heat balance for 1 kg of flour, room 3.2 and flour 1.75 kJ/K at 18 °C, wetting 10.3547 kJ:
// (8 × (4.95 + 2.9302) − 89.1 − 10.3547)/2.9302 = −12.43 °C at 70 %, (8 × 8.7174 − 99.4547)/3.7674 = −7.89 °C at 90 %.
// Ice of −18 °C for tap water of 18 °C, per kg: 4.186 × 30.43/(4.186 × 18 + 334 + 37.8) = 0.2849, of 700 g 199 g; 0.2424, 218 g.
test('water below 0 °C is never written: a dash, the ice, and why', () => {
  const { water, rows } = cold([tap, fridge])
  expect(water.batches[0]?.waterCelsius).toBeCloseTo(-12.427, 2)
  expect(rows.map(({ head, cells }) => [head, ...cells])).toEqual([
    ['Water', '–', '–'],
    ['Ice in place of water, g', '199', '218'],
  ])
  expect(waterWarnings(water, degreeWords('celsius'))[0]).toBe(
    'Water is never colder than 0 °C, so water alone cannot bring this dough to 8.0 °C: 199 g of ice in place of as much water, the rest as cold as the tap gives it, would (70).',
  )
})

test('one water for all is not below 0 °C either, and the doughs then come out warmer', () => {
  const { water, rows } = cold([tap, fridge], false)
  expect(rows.map(({ cells }) => cells)).toEqual([['0.0', '0.0']])
  // (89.1 + 10.3547)/(4.95 + 2.9302)
  expect(water.batches[0]?.oneWaterDoughCelsius).toBeCloseTo(12.621, 2)
})

test('without a tap, a true freezer or enough ice, what is missing is said', () => {
  const said = (things: KitchenThing[], wanted?: number) =>
    waterWarnings(cold(things, true, wanted).water, degreeWords('celsius'))[0]
  expect(said([])).toContain('add your tap under Kitchen')
  expect(said([tap, { ...fridge, freezerCelsius: 5 }])).toContain('is above 0 °C and makes none')
  // At 18 °C of dough the water is to be 14.5 °C: below the tap, above freezing.
  expect(said([tap, { ...fridge, freezerCelsius: 5 }], 18)).toMatch(/^Colder than the tap gives it/)
  expect(said([tap, fridge], -50)).toContain('Even ice alone would not cool this dough enough')
})
