import { expect, test } from 'vitest'
import { specificHeat } from '@/core/dough-temperature/heat-part.ts'
import { iceShare } from '@/core/dough-temperature/ice-share.ts'
import { leavenOf, pastLimits, waterLimits } from '@/core/dough-temperature/water-limits.ts'
import { waterPlan } from '@/core/dough-temperature/water-plan.ts'
import type { Fridge, KitchenThing, Mixer, Tap } from '@/core/kitchen/kitchen-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { aPlan, factorOf, levelsOf, plainFormula, step } from '../trial/a-plan.ts'

const temperature = {
  wantedDoughCelsius: 24,
  flourCelsius: 22,
  roomCelsius: 22,
  matched: true,
}
const bare: Plan['formula'] = { ...plainFormula, ingredients: plainFormula.ingredients.slice(0, 2) }

function planned(change: Partial<Plan> = {}, kitchen: KitchenThing[] = []) {
  const result = waterPlan(aPlan({ formula: bare, temperature, ...change }), kitchen)
  if (!result.ok) throw new Error(result.reason)
  return result
}

const cool = { ...temperature, wantedDoughCelsius: 25, flourCelsius: 21, roomCelsius: 21 }

test('each level gets the water of the balance (reference value: 31.043 at 65 % from 21 to 25 °C)', () => {
  const plan = planned({ levels: levelsOf([55, 65, 80], 65), temperature: cool })
  // (25 × (4.95 + w) − 21 × 4.95 − q + 7)/w with w = 4.186 h and q = 10.3547: 33.046/2.3023 at 55 %, at 80 % 16.4453/3.3488 + 25
  expect(plan.batches.map(({ waterCelsius }) => waterCelsius.toFixed(2))).toEqual([
    '32.14',
    '31.04',
    '29.91',
  ])
  expect(plan.oneWaterCelsius).toBeCloseTo(31.043, 2)
  expect(plan.batches[1]?.oneWaterDoughCelsius).toBeCloseTo(25, 10)
  expect(plan.giveOrTakeCelsius).toBe(2)
})

test('with one warm water for all the wetter dough is the warmer (reference values: 25.002 at 55 %, 25.633 at 80 %)', () => {
  const warm = { ...temperature, wantedDoughCelsius: 25.002 }
  const plan = planned({ levels: levelsOf([55, 80], 55), temperature: warm })
  expect(plan.oneWaterCelsius).toBeCloseTo(30, 2)
  expect(plan.batches[1]?.oneWaterDoughCelsius).toBeCloseTo(25.633, 2)
  expect(plan.spreadCelsius).toBeCloseTo(0.631, 2)
  const [dry, wet] = plan.batches
  expect(dry?.oneWaterProofMinutes).toBeCloseTo(0, 9)
  // 60 min × (2.1^(−0.0631) − 1) = −2.74
  expect(wet?.oneWaterProofMinutes).toBeCloseTo(-2.74, 2)
  expect(plan.spreadMinutes).toBeCloseTo(2.74, 2)
  expect(plan.warmSeconds).toBe(3600)
})

test('with one cool water for all the wetter dough is the cooler (reference values: 20.79 at 80 %; 21.2 at 55 %)', () => {
  // water of 18 °C at 80 %: 20.790
  const chilly = { ...temperature, wantedDoughCelsius: 20.79 }
  const plan = planned({ levels: levelsOf([55, 80], 80), temperature: chilly })
  expect(plan.oneWaterCelsius).toBeCloseTo(18, 2)
  expect(plan.batches[0]?.oneWaterDoughCelsius).toBeCloseTo(21.2, 1)
})

test('the simple rule, right at the control, is off at the others by what one water is off', () => {
  const plan = planned({ levels: levelsOf([55, 65, 80], 65), temperature: cool })
  expect(plan.batches[1]?.simpleRuleDoughErrorCelsius).toBeCloseTo(0, 9)
  for (const each of plan.batches)
    expect(each.simpleRuleDoughErrorCelsius).toBeCloseTo(each.oneWaterDoughCelsius - 25, 9)
})

test('a drier bag of flour asks for cooler water (reference values: 28.294 at 11.5 %, 30.719 at 14.5 %)', () => {
  const waterAt = (moisturePercent: number) => {
    const bag = { id: 'bag', kind: 'flour' as const, name: 'flour', lot: '', moisturePercent }
    const formula = {
      ...bare,
      ingredients: bare.ingredients.map((one) =>
        one.kind === 'flour' ? { ...one, flourLotId: 'bag' } : one,
      ),
    }
    const at = { ...temperature, flourCelsius: 20, roomCelsius: 20 }
    const plan = planned({ formula, temperature: at, levels: levelsOf([65, 70], 65) }, [bag])
    return plan.batches[0]?.waterCelsius
  }
  expect(waterAt(11.5)).toBeCloseTo(28.294, 2)
  expect(waterAt(14.5)).toBeCloseTo(30.719, 2)
})

const mixer: Mixer = {
  id: 'm',
  kind: 'mixer',
  name: 'mixer',
  leastDoughGrams: 1,
  mostDoughGrams: 9000,
  bowlGrams: 1200,
  bowlHeat: 0.5,
  workKilojoulesPerKilogram: 8,
}

test('a bowl at room temperature takes its share and 0.8 off the room’s: 1.2 kg steel, worked by hand', () => {
  const plan = planned({ kitchenIds: ['m'], levels: levelsOf([65, 70], 65) }, [
    { ...mixer, way: 'hand' },
  ])
  // all without water 1.75 + 0.6 + 2.4 = 4.75 at 22 °C: (24 × (4.75 + 2.7209) − 104.5 − 10.3547 − 8)/2.7209 = 56.447/2.7209
  expect(plan.batches[0]?.waterCelsius).toBeCloseTo(20.746, 2)
})

test('mixing work comes from the plan, then the log, then the mixer, then what is usual for the way', () => {
  const from = (change: Partial<Plan>, kitchen: KitchenThing[] = []) =>
    planned(change, kitchen).batches[0]?.work
  const stated = { ...temperature, mixingKilojoulesPerKilogram: 0 }
  expect(from({ temperature: stated })?.from).toBe('plan')
  expect(from({ kitchenIds: ['m'] }, [mixer])).toMatchObject({
    from: 'mixer',
    kilojoulesPerKilogram: 8,
  })
  expect(from({})).toMatchObject({ from: 'usual', way: 'hand', kilojoulesPerKilogram: -7 })
  const machine = [{ ...step('mix', 'mix', 60), uses: ['mixer' as const] }]
  expect(from({ steps: machine })).toMatchObject({ way: 'stand', roomHeat: 1.6 })
  expect(from({ temperature: { ...temperature, mixedBy: 'bench' } })).toMatchObject({
    way: 'bench',
    giveOrTakeCelsius: 5,
  })
  const learned = {
    ...{ kilojoulesPerKilogram: 5, sdKilojoulesPerKilogram: 1, batches: 4, slope: null },
    roomHeatChange: 0.5,
  }
  const result = waterPlan(aPlan({ temperature }), [], learned)
  expect(result.ok && result.batches[0]?.work).toEqual({
    ...{ kilojoulesPerKilogram: 5, from: 'learned', batches: 4, way: 'hand', roomHeat: 3.7 },
    giveOrTakeCelsius: 1,
  })
})

const tap: Tap = { id: 't', kind: 'tap', name: 'tap', coldestCelsius: 18, warmestCelsius: 45 }
const fridge: Fridge = { id: 'f', kind: 'fridge', name: 'fridge', celsius: 4, freezerCelsius: -18 }

test('water colder than the tap asks for ice of the freezer, in grams; hotter than the tap says by how much', () => {
  const hot = { ...temperature, flourCelsius: 30, roomCelsius: 30 }
  const levels = levelsOf([65, 70], 65)
  const [batch] = planned({ temperature: hot, kitchenIds: ['t', 'f'], levels }, [
    tap,
    fridge,
  ]).batches
  const ice = iceShare(18, batch?.waterCelsius ?? Number.NaN, -18)
  expect(ice.ok).toBe(true)
  expect(batch?.ice?.grams).toBeCloseTo(ice.ok ? ice.share * 650 : Number.NaN, 9)
  const cold = { ...temperature, flourCelsius: -10, roomCelsius: 0 }
  const [chilled] = planned({ temperature: cold, kitchenIds: ['t', 'f'], levels }, [
    tap,
    fridge,
  ]).batches
  expect(chilled?.ice).toBeNull()
  const lukewarm = { ...tap, warmestCelsius: 30 }
  const [far] = planned({ temperature: cold, kitchenIds: ['t'], levels }, [lukewarm]).batches
  expect(far?.hotterThanTapCelsius).toBeCloseTo((far?.waterCelsius ?? 0) - 30, 9)
})

test('ice: reasons', () => {
  expect(iceShare(15, 16)).toEqual({ ok: false, reason: 'tap-cold-enough' })
  expect(iceShare(15, -200)).toEqual({ ok: false, reason: 'more-than-all' })
  expect(iceShare(15, 5, 2)).toEqual({ ok: false, reason: 'freezer-not-freezing' })
})

test('limits go by the leaven and how it is added, and say by how much water is past them', () => {
  expect(leavenOf(plainFormula)).toBe('instant')
  expect(leavenOf(bare)).toBeNull()
  const instant = waterLimits('instant')
  expect(instant.added).toBe('with-flour')
  expect(pastLimits(instant.mostCelsius + 3, instant)).toBe(3)
  expect(pastLimits(instant.leastCelsius - 3, instant)).toBe(-3)
  expect(pastLimits(24, instant)).toBe(0)
  expect(pastLimits(20, waterLimits('active-dry'))).toBe(0)
})

test('milk warms and cools as its water and its solids', () => {
  // 0.88 × 4.186 + 0.12 × 1.6
  expect(specificHeat({ kind: 'liquid', waterPercent: 88 })).toBeCloseTo(3.87568, 10)
})

test('reasons: no temperatures, no water at the mix', () => {
  expect(waterPlan(aPlan({ temperature: null }), [])).toEqual({
    ok: false,
    reason: 'no-temperatures',
  })
  const dry = { ...bare, ingredients: bare.ingredients.slice(0, 1) }
  const plan = aPlan({ formula: dry, temperature, factor: factorOf({ on: 'own' }) })
  expect(waterPlan(plan, [])).toMatchObject({ ok: false, reason: 'no-water-at-mix' })
})

const milk = { id: 'milk', name: 'milk', kind: 'liquid' as const, waterPercent: 88, celsius: 5 }

test('milk from the fridge as the only liquid: the balance without water, worked by hand', () => {
  const [flour] = bare.ingredients
  if (!flour) throw new Error('no flour')
  const plan = aPlan({
    formula: { ...bare, ingredients: [flour, { ...milk, percent: 70 }] },
    factor: factorOf({ on: 'ingredient', ingredientId: 'milk' }),
    levels: levelsOf([60, 80]),
    temperature,
  })
  const found = waterPlan(plan, [])
  if (found.ok || found.reason !== 'no-water-at-mix') throw new Error('no such doughs')
  // c of milk 3.87568, flour and room 4.95 at 22 °C, wetting less work 10.3547 − 7:
  // (108.9 + 0.6 × 3.87568 × 5 + 3.3547)/(4.95 + 2.325408) = 123.8817/7.275408 = 17.027; at 0.8: 127.7574/8.050544 = 15.870
  expect(found.doughs.map(({ doughCelsius: celsius }) => celsius.toFixed(2))).toEqual([
    '17.03',
    '15.87',
  ])
  expect(found.spreadCelsius).toBeCloseTo(1.158, 2)
  expect(found.spreadMinutes).toBeGreaterThan(0)
})

test('where one option takes water and the other none, the watered dough has its water', () => {
  const plan = aPlan({
    formula: { ...bare, ingredients: [...bare.ingredients, { ...milk, percent: 0 }] },
    factor: factorOf({ on: 'choice' }),
    levels: [
      { id: 'w', value: null, label: 'water', control: true },
      {
        ...{ id: 'm', value: null, label: 'milk', control: false },
        changes: [
          { what: 'ingredient', ingredientId: 'water', name: 'water', percent: 0 },
          { what: 'ingredient', ingredientId: 'milk', name: 'milk', percent: 70 },
        ],
      },
    ],
    temperature,
  })
  const found = waterPlan(plan, [])
  if (found.ok || found.reason !== 'no-water-at-mix') throw new Error('no such doughs')
  const [watered, unwatered] = found.doughs
  expect([watered?.doughCelsius, unwatered?.waterCelsius]).toEqual([24, null])
  expect(watered?.waterCelsius).toBeGreaterThan(15)
})
