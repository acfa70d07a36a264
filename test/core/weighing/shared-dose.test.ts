import { expect, test } from 'vitest'
import { formulaViews } from '@/core/formula/formula-views.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { SharedDoseAnswer, SharedDoseRecipe } from '@/core/weighing/shared-dose.ts'
import { shoppingTotals } from '@/core/weighing/shopping-totals.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { aPlan, factorOf, levelsOf, plainFormula, scale } from '../trial/a-plan.ts'

const scales = [scale(1, 5000), scale(0.1, 500)]
const small = { ...plainFormula, batchSize: { by: 'flour' as const, flourGrams: 200 } }

const planOf = (change: Partial<Plan> = {}) =>
  aPlan({ formula: small, kitchenIds: scales.map(({ id }) => id), ...change })

function recipe(answer: SharedDoseAnswer | undefined): SharedDoseRecipe {
  if (!answer?.ok) throw new Error(answer?.reason ?? 'no dose')
  return answer
}

test('5 g in 495 g water, 20 g dosed: 0.2 g yeast and 19.8 g water, which the batch gives up', () => {
  // strength 5/500 = 1 %; u(a) = u(b) = 0.1/√6, so u(strength) = √(495² + 5²) × 0.0408 / 500² ; dose u = 0.0408/20
  const sharedDoses = [
    {
      ingredientId: 'yeast',
      by: 'stock' as const,
      stockGrams: 5,
      stockWaterGrams: 495,
      doseGrams: 20,
    },
  ]
  const plan = planOf({ sharedDoses })
  const sheet = weighSheet(plan, scales)
  const dose = recipe(sheet.doses[0])
  const u = 0.1 / Math.sqrt(6)
  expect(dose.strength).toBe(0.01)
  expect(dose.strengthUncertainty).toBeCloseTo((Math.hypot(495, 5) * u) / 500 ** 2, 12)
  expect(dose.doses[0]?.ingredientGrams).toBeCloseTo(0.2, 12)
  expect(dose.doses[0]?.carrierGrams).toBeCloseTo(19.8, 12)
  expect(dose.leftoverGrams).toBeCloseTo(440, 9)
  expect(dose.ownRelativeUncertainty).toBeCloseTo(u / 20, 12)
  const [batch] = sheet.batches
  // 62 % of 200 g = 124 g water, less 19.8
  expect(batch?.lines.map(({ key, what, grams }) => `${key} ${what} ${grams}`)).toEqual([
    'final/flour ingredient 200',
    'final/water ingredient 104.2',
    'final/salt ingredient 4',
    'final/yeast dose 20',
  ])
  expect(batch?.achieved?.value).toBeCloseTo(62, 10)
})

test('a scale that cannot show the yeast gets advice: a dry mix for instant yeast, amounts it can weigh, a tenth over', () => {
  const sheet = weighSheet(planOf(), scales)
  const [advice, ...rest] = sheet.advice
  expect(rest).toEqual([])
  // 0.8 g on a 0.1 g scale tared: 0.0408/0.8 = 5.1 %
  expect(advice).toMatchObject({ ingredientId: 'yeast', better: 'dry-mix' })
  expect(advice?.relativeUncertainty).toBeCloseTo(0.051, 3)
  const dose = recipe(advice?.dryMix)
  expect(dose.carrierId).toBe('flour')
  expect(dose.ingredient.grams).toBeGreaterThanOrEqual(3 * 0.8 * 1.1)
  expect(dose.ingredient.relativeUncertainty).toBeLessThanOrEqual(0.025)
  expect(dose.relativeUncertainty).toBeLessThan(0.03)
  expect(dose.leftoverGrams).toBeGreaterThan(0)
  for (const { ingredientGrams } of dose.doses)
    expect(Math.abs(ingredientGrams - 0.8)).toBeLessThan(0.02)
  expect(recipe(advice?.stock).carrierId).toBe('water')
})

test('shared, the batches still hold all their flour and water, and the advice is gone', () => {
  for (const by of ['dry-mix', 'stock'] as const) {
    const plan = planOf({ sharedDoses: [{ ingredientId: 'yeast', by }] })
    const sheet = weighSheet(plan, scales)
    expect(sheet.advice).toEqual([])
    for (const [index, batch] of sheet.batches.entries()) {
      const whole = formulaViews(batch.formula).doughGrams
      expect(Math.abs(batch.doughGrams - whole)).toBeLessThan(0.5)
      const wanted = plan.levels[index]?.value ?? Number.NaN
      const { value, expandedUncertainty } = batch.achieved ?? { value: 0, expandedUncertainty: 0 }
      expect(Math.abs(value - wanted)).toBeLessThanOrEqual(expandedUncertainty)
    }
  }
})

test('yeast as the factor: each batch its own dose, and the strength an error all share', () => {
  const plan = planOf({
    factor: factorOf({ on: 'yeast', ingredientId: 'yeast' }),
    levels: levelsOf([0.1, 0.4], 0.4),
    sharedDoses: [{ ingredientId: 'yeast', by: 'stock' }],
  })
  const sheet = weighSheet(plan, scales)
  const [low, high] = recipe(sheet.doses[0]).doses
  expect((high?.targetGrams ?? 0) / (low?.targetGrams ?? 1)).toBeCloseTo(4, 10)
  const [batch] = sheet.batches
  expect(batch?.achieved?.value).toBeCloseTo(0.1, 2)
  expect(batch?.achieved?.uncertainty).toBeGreaterThan(batch?.achieved?.ownUncertainty ?? Infinity)
  expect(sheet.neighbours[0]?.apart).toBe('kept-apart')
  const single = weighSheet({ ...plan, sharedDoses: [] }, [scale(1, 5000)])
  expect(single.neighbours[0]?.apart).toBe('not')
})

test('what a stock leaves over is bought too', () => {
  const sharedDoses = [
    {
      ingredientId: 'yeast',
      by: 'stock' as const,
      stockGrams: 5,
      stockWaterGrams: 495,
      doseGrams: 80,
    },
  ]
  const rows = shoppingTotals(planOf({ sharedDoses, plannedSessions: 1 }), scales)
  // 3 × 0.8 g in the batches, 500 − 3 × 80 = 260 g of stock left over holding 2.6 g
  expect(rows.find(({ ingredientId }) => ingredientId === 'yeast')?.totalGrams).toBeCloseTo(5, 9)
})

test('reasons: no scale, nothing that carries it, none in the dough', () => {
  const reason = (change: Partial<Plan>, things = scales) => {
    const [answer] = weighSheet(planOf(change), things).doses
    return answer?.ok === false ? answer.reason : null
  }
  const stock = [{ ingredientId: 'yeast', by: 'stock' as const }]
  expect(reason({ sharedDoses: stock }, [])).toBe('no-scale')
  const dry = { ...small, ingredients: small.ingredients.filter(({ kind }) => kind !== 'water') }
  const salt = factorOf({ on: 'salt', ingredientId: 'salt' })
  expect(reason({ sharedDoses: stock, formula: dry, factor: salt, levels: levelsOf([1, 2]) })).toBe(
    'no-carrier',
  )
  const none = small.ingredients.map((one) => (one.kind === 'yeast' ? { ...one, percent: 0 } : one))
  expect(reason({ sharedDoses: stock, formula: { ...small, ingredients: none } })).not.toBeNull()
})

test('1 g of yeast a batch on a 1 g scale: a dry mix that loses little flour', () => {
  const formula = {
    ...plainFormula,
    ingredients: plainFormula.ingredients.map((one) =>
      one.kind === 'yeast' ? { ...one, percent: 0.2 } : one,
    ),
    batchSize: { by: 'flour' as const, flourGrams: 500 },
  }
  const coarse = [scale(1, 5000)]
  const plan = planOf({ formula, kitchenIds: coarse.map(({ id }) => id) })
  const dose = recipe(weighSheet(plan, coarse).advice[0]?.dryMix)
  // u = 1/√6 = 0.408 g: 4 % of it asks for 10.2 g, so 11 g; 2 % for a dose of 20.4 g, so 1 to 24 and 25 g to each.
  expect([dose.ingredient.grams, dose.carrier.grams]).toEqual([11, 264])
  expect(dose.doses.map(({ grams }) => grams)).toEqual([25, 25, 25])
  expect(dose.leftoverGrams).toBe(200)
  expect(dose.ownRelativeUncertainty).toBeCloseTo(0.408 / 25, 4)
  expect(dose.relativeUncertainty).toBeLessThan(0.05)
})

test('a dry mix is made in the largest flour that every option keeps, though the largest of all is swapped', () => {
  const swap = (id: string, name: string) => ({
    ...{ id, value: null, label: name, control: false },
    changes: [{ what: 'ingredient' as const, ingredientId: 'flour', name }],
  })
  const [white, ...others] = small.ingredients
  if (!white) throw new Error('no flour')
  const spelt = { id: 'spelt', name: 'spelt', kind: 'flour' as const, percent: 30 }
  const ingredients = [{ ...white, percent: 70 }, spelt, ...others]
  const plan = planOf({
    factor: factorOf({ on: 'choice' }),
    levels: [swap('a', 'Strong flour'), swap('b', 'Stoneground flour')],
    formula: { ...small, ingredients },
    sharedDoses: [{ ingredientId: 'yeast', by: 'dry-mix' }],
  })
  const sheet = weighSheet(plan, scales)
  const dose = recipe(sheet.doses[0])
  expect(dose.carrierId).toBe('spelt')
  for (const { lines } of sheet.batches) {
    const grams = (id: string) => lines.find(({ ingredientId }) => ingredientId === id)?.grams ?? 0
    // 70 and 30 % of 200 g, of which the dose brings its share; 0.4 % of yeast is 0.8 g
    expect(grams('flour')).toBe(140)
    expect(Math.abs(grams('spelt') + grams('yeast') - 60.8)).toBeLessThan(0.1)
  }
})
