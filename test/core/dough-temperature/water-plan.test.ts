import { expect, test } from 'vitest'
import { doughCelsius } from '@/core/dough-temperature/heat-balance.ts'
import { mixBodies, specificHeat } from '@/core/dough-temperature/heat-part.ts'
import { iceShare } from '@/core/dough-temperature/ice-share.ts'
import { learnMixingWork, workAtLevel } from '@/core/dough-temperature/learn-mixing-work.ts'
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
  mixingKilojoulesPerKilogram: 0,
}
const bare: Plan['formula'] = { ...plainFormula, ingredients: plainFormula.ingredients.slice(0, 2) }

function planned(change: Partial<Plan> = {}, kitchen: KitchenThing[] = []) {
  const result = waterPlan(aPlan({ formula: bare, temperature, ...change }), kitchen)
  if (!result.ok) throw new Error(result.reason)
  return result
}

test('each level gets the water of the balance (computed table: 18.96 at 55 %, 20.54 at 80 %)', () => {
  const plan = planned({ levels: levelsOf([55, 65, 80], 65) })
  expect(plan.batches.map(({ waterCelsius }) => waterCelsius.toFixed(2))).toEqual([
    '18.96',
    '19.74',
    '20.54',
  ])
  expect(plan.oneWaterCelsius).toBeCloseTo(19.74, 2)
  expect(plan.batches[1]?.oneWaterDoughCelsius).toBeCloseTo(24, 10)
})

test('one water for all parts the doughs: about 1.1 °C between 55 and 80 % at 18 °C water, so with 18.96', () => {
  const plan = planned({ levels: levelsOf([55, 80], 55) })
  // (1.75 × 22 + 0.8 × 4.186 × 18.9598 + 15.1)/(1.75 + 3.3488) = 117.0933/5.0988 = 22.965
  expect(plan.batches[1]?.oneWaterDoughCelsius).toBeCloseTo(22.965, 2)
  expect(plan.spreadCelsius).toBeCloseTo(1.035, 2)
  const [dry, wet] = plan.batches
  expect(dry?.oneWaterProofMinutes).toBeCloseTo(0, 9)
  expect(wet?.oneWaterProofMinutes).toBeGreaterThan(0)
  expect(plan.spreadMinutes).toBeCloseTo(wet?.oneWaterProofMinutes ?? Number.NaN, 9)
  expect(plan.warmSeconds).toBe(3600)
})

test('the simple rule, right at the control, is off at the others by what one water is off', () => {
  const plan = planned({ levels: levelsOf([55, 65, 80], 65) })
  expect(plan.batches[1]?.simpleRuleDoughErrorCelsius).toBeCloseTo(0, 9)
  expect(plan.batches[0]?.simpleRuleDoughErrorCelsius).toBeGreaterThan(0)
  expect(plan.batches[2]?.simpleRuleDoughErrorCelsius).toBeLessThan(0)
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
const { mixingKilojoulesPerKilogram: _, ...noWork } = temperature

test('a bowl at room temperature takes its share: 1.2 kg steel, worked by hand', () => {
  const plan = planned({ kitchenIds: ['m'], levels: levelsOf([65, 70], 65) }, [mixer])
  // (24 × (1.75 + 2.7209 + 0.6) − 1.75 × 22 − 0.6 × 22 − 15.1)/2.7209 = 54.9016/2.7209 = 20.1777
  expect(plan.batches[0]?.waterCelsius).toBeCloseTo(20.178, 2)
})

test('mixing work comes from the plan, then the log, then the mixer, then a stated default', () => {
  const from = (change: Partial<Plan>, kitchen: KitchenThing[] = []) =>
    planned({ temperature: noWork, ...change }, kitchen).batches[0]?.work
  expect(from({ temperature })?.from).toBe('plan')
  expect(from({ kitchenIds: ['m'] }, [mixer])).toMatchObject({
    from: 'mixer',
    kilojoulesPerKilogram: 8,
  })
  expect(from({})?.from).toBe('default-hand')
  const machine = [{ ...step('mix', 'mix', 60), uses: ['mixer' as const] }]
  expect(from({ steps: machine })?.from).toBe('default-machine')
  const learned = { kilojoulesPerKilogram: 5, sdKilojoulesPerKilogram: 1, batches: 4, slope: null }
  const result = waterPlan(aPlan({ temperature: noWork }), [], learned)
  expect(result.ok && result.batches[0]?.work).toEqual({
    kilojoulesPerKilogram: 5,
    from: 'learned',
    batches: 4,
  })
})

test('mixing work learned from logged doughs gives the work that made them, with its slope from three levels on', () => {
  const mixes = [60, 70, 80, 80].map((level) => {
    const formula = {
      ...bare,
      ingredients: bare.ingredients.map((one) =>
        one.kind === 'water' ? { ...one, percent: level } : one,
      ),
    }
    const bodies = mixBodies(formula, { flourCelsius: 20, roomCelsius: 21 })
    const work = 6 + 0.1 * (level - 70)
    return { bodies, waterCelsius: 25, doughCelsius: doughCelsius(bodies, 25, work) ?? 0, level }
  })
  const learned = learnMixingWork(mixes)
  if (!learned.ok) throw new Error(learned.reason)
  // work 5, 6, 7, 7: mean 6.25, sd √(2.75/3)
  expect(learned.kilojoulesPerKilogram).toBeCloseTo(6.25, 8)
  expect(learned.sdKilojoulesPerKilogram).toBeCloseTo(Math.sqrt(2.75 / 3), 8)
  expect(learned.batches).toBe(4)
  expect(learned.slope?.perLevel).toBeCloseTo(0.1, 8)
  expect(workAtLevel(learned, 90)).toBeCloseTo(8, 8)
  const two = learnMixingWork(mixes.filter(({ level }) => level !== 70))
  expect(two.ok && two.slope).toBeNull()
  expect(learnMixingWork([])).toEqual({ ok: false, reason: 'no-logged-mix' })
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
  expect(waterLimits('active-dry').leastCelsius).toBeGreaterThan(instant.leastCelsius)
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
  // c of milk 3.87568: (1.75 × 22 + 0.6 × 3.87568 × 5 + 15.1)/(1.75 + 0.6 × 3.87568) = 65.227/4.07541 = 16.005;
  // at 0.8: (38.5 + 15.50272 + 15.1)/4.850544 = 14.246
  expect(found.doughs.map(({ doughCelsius: celsius }) => celsius.toFixed(2))).toEqual([
    '16.01',
    '14.25',
  ])
  expect(found.spreadCelsius).toBeCloseTo(1.759, 2)
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

test('with an autolyse the balance is said to be taken there', () => {
  const steps = [step('soak', 'autolyse', 1800), ...aPlan().steps]
  expect(planned({ steps }).firstWetting).toBe('autolyse')
  expect(planned().firstWetting).toBe('mix')
})
