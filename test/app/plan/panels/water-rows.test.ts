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

// By the heat balance for 1 kg of flour: (8 × (1.75 + 2.9302) − 31.5 − 15.1)/2.9302 = −3.13 °C at 70 %,
// (8 × 5.5174 − 46.6)/3.7674 = −0.65 °C at 90 %. Ice of −18 °C for tap water of 18 °C, per kg:
// 4.186 × 21.13/(4.186 × 18 + 334 + 37.8) = 0.1978, of 700 g 138 g.
test('water below 0 °C is never written: a dash, the ice, and why', () => {
  const { water, rows } = cold([tap, fridge])
  expect(water.batches[0]?.waterCelsius).toBeCloseTo(-3.13, 2)
  expect(rows.map(({ head, cells }) => [head, ...cells])).toEqual([
    ['Water', '–', '–'],
    ['Ice in place of water, g', '138', '157'],
  ])
  expect(waterWarnings(water, degreeWords('celsius'))[0]).toBe(
    'Water is never colder than 0 °C, so water alone cannot bring this dough to 8.0 °C: 138 g of ice in place of as much water, the rest as cold as the tap gives it, would (70).',
  )
})

test('one water for all is not below 0 °C either, and the doughs then come out warmer', () => {
  const { water, rows } = cold([tap, fridge], false)
  expect(rows.map(({ cells }) => cells)).toEqual([['0.0', '0.0']])
  // (31.5 + 15.1)/4.6802
  expect(water.batches[0]?.oneWaterDoughCelsius).toBeCloseTo(9.957, 2)
})

test('without a tap, a true freezer or enough ice, what is missing is said', () => {
  const said = (things: KitchenThing[], wanted?: number) =>
    waterWarnings(cold(things, true, wanted).water, degreeWords('celsius'))[0]
  expect(said([])).toContain('add your tap under Kitchen')
  expect(said([tap, { ...fridge, freezerCelsius: 5 }])).toContain('is above 0 °C and makes none')
  // At 21 °C of dough the water is to be 15 °C or so: below the tap, above freezing.
  expect(said([tap, { ...fridge, freezerCelsius: 5 }], 21)).toMatch(/^Colder than the tap gives it/)
  expect(said([tap, fridge], -60)).toContain('Even ice alone would not cool this dough enough')
})
