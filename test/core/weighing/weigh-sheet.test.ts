import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Formula } from '@/core/formula/formula-record.ts'
import type { ActsOn } from '@/core/trial/factor.ts'
import { levelFromWeights } from '@/core/weighing/level-from-weights.ts'
import { shoppingTotals } from '@/core/weighing/shopping-totals.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import {
  aPlan,
  factorOf,
  hydration,
  kitchen,
  levelsOf,
  plainFormula,
  scale,
} from '../trial/a-plan.ts'

const none = { dustingFlourGrams: 0, handWaterGrams: 0, oilGrams: 0 }

function richFormula(flourGrams: number): Formula {
  return {
    ingredients: [
      { id: 'flour', name: 'white', kind: 'flour', percent: 80 },
      { id: 'rye', name: 'rye', kind: 'flour', percent: 20 },
      { id: 'water', name: 'water', kind: 'water', percent: 70 },
      { id: 'salt', name: 'salt', kind: 'salt', percent: 2 },
      { id: 'yeast', name: 'yeast', kind: 'yeast', percent: 0.4, yeastForm: 'instant' },
      { id: 'oil', name: 'oil', kind: 'fat', percent: 4 },
    ],
    preferments: [
      {
        id: 'poolish',
        name: 'poolish',
        kind: 'poolish',
        flourSharePercent: 20,
        parts: [
          { ingredientId: 'flour', percent: 100 },
          { ingredientId: 'water', percent: 100 },
          { ingredientId: 'yeast', percent: 0.1 },
        ],
      },
      {
        id: 'starter',
        name: 'starter',
        kind: 'starter',
        flourSharePercent: 10,
        parts: [
          { ingredientId: 'rye', percent: 100 },
          { ingredientId: 'water', percent: 80 },
        ],
      },
    ],
    batchSize: { by: 'flour', flourGrams },
  }
}

const factors: [ActsOn, number, number][] = [
  [hydration, 55, 90],
  [{ on: 'salt', ingredientId: 'salt' }, 0.5, 3],
  [{ on: 'yeast', ingredientId: 'yeast' }, 0.1, 2],
  [{ on: 'ingredient', ingredientId: 'oil' }, 0, 10],
  [{ on: 'flour-share', ingredientId: 'rye', fromIngredientId: 'flour' }, 15, 60],
  [{ on: 'preferment-share', prefermentId: 'poolish' }, 5, 40],
  [{ on: 'preferment-share', prefermentId: 'starter' }, 5, 20],
]

test('the level read back from rounded weights lies within three standard uncertainties and the worst rounding', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...factors),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 200, max: 2000, noNaN: true }),
      fc.constantFrom(0.1, 0.5, 1, 2),
      ([acts, least, most], where, flourGrams, resolution) => {
        const value = least + (most - least) * where
        const plan = aPlan({
          formula: richFormula(flourGrams),
          factor: factorOf(acts),
          levels: levelsOf([value, most], most),
          kitchenIds: [],
        })
        const [batch] = weighSheet(plan, [scale(resolution, 10_000)]).batches
        if (!batch?.achieved) throw new Error('no level read back')
        const { value: back, expandedUncertainty } = batch.achieved
        // each rounding is within d/2 = √1.5 u, so the sum of all is the surest bound; U = 2u holds for most draws
        const worst = batch.lines.reduce((sum, { share, uncertaintyGrams }) => {
          if (!share) return sum
          const flour = flourGrams * 0.99
          return (
            sum +
            (Math.sqrt(1.5) * uncertaintyGrams * (100 * share.above + back * share.below)) / flour
          )
        }, 0)
        expect(Math.abs(back - value)).toBeLessThanOrEqual(
          Math.max(expandedUncertainty, worst) + 1e-9,
        )
      },
    ),
  )
})

test('flour and water alone: the level read back always lies within U', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 50, max: 90, noNaN: true }),
      fc.double({ min: 100, max: 2000, noNaN: true }),
      fc.constantFrom(0.1, 1, 2, 5),
      (value, flourGrams, resolution) => {
        const formula: Formula = {
          ingredients: plainFormula.ingredients.slice(0, 2),
          preferments: [],
          batchSize: { by: 'flour', flourGrams },
        }
        const plan = aPlan({ formula, levels: levelsOf([value, 40], 40), kitchenIds: [] })
        const achieved = weighSheet(plan, [scale(resolution, 10_000)]).batches[0]?.achieved
        if (!achieved) throw new Error('no level read back')
        expect(Math.abs(achieved.value - value)).toBeLessThanOrEqual(
          achieved.expandedUncertainty + 1e-9,
        )
      },
    ),
  )
})

test('a starter enters once, by its derivative: worked by hand', () => {
  const formula: Formula = {
    ...plainFormula,
    ingredients: plainFormula.ingredients.slice(0, 2),
    preferments: [
      {
        id: 'starter',
        name: 'starter',
        kind: 'starter',
        flourSharePercent: 20,
        parts: [
          { ingredientId: 'flour', percent: 100 },
          { ingredientId: 'water', percent: 100 },
        ],
      },
    ],
  }
  const plan = aPlan({ formula, levels: levelsOf([70, 80], 70) })
  const [batch] = weighSheet(plan, kitchen).batches
  expect(batch?.lines.map(({ what, grams }) => [what, grams])).toEqual([
    ['starter', 400],
    ['ingredient', 800],
    ['ingredient', 500],
  ])
  // N = 500 + 200 = 700, D = 800 + 200 = 1000; dS: (0.5 − 0.7 × 0.5)/10 = 0.015; dF: −0.07; dW: 0.1; each times 1/√6
  const expected = Math.hypot(0.015, 0.07, 0.1) / Math.sqrt(6)
  expect(batch?.achieved?.value).toBe(70)
  expect(batch?.achieved?.uncertainty).toBeCloseTo(expected, 12)
})

test('neighbours on a coarse scale: kept apart, barely, not', () => {
  const formula: Formula = {
    ...plainFormula,
    ingredients: plainFormula.ingredients.slice(0, 2),
    batchSize: { by: 'flour', flourGrams: 100 },
  }
  // d = 1 on 100 g flour and L g water: u = 0.408 √(1 + (L/100)²) ≈ 0.50 points; blur of a pair 2 √2 × 0.5 ≈ 1.4
  const apart = (...values: number[]) =>
    weighSheet(aPlan({ formula, levels: levelsOf(values) }), kitchen).neighbours.map(
      (one) => one.apart,
    )
  expect(apart(70, 60, 76)).toEqual(['kept-apart', 'kept-apart'])
  expect(apart(70, 74)).toEqual(['barely'])
  expect(apart(70, 72)).toEqual(['not'])
})

test('rows times batches, preferment parts first, whole preferments unweighed', () => {
  const plan = aPlan({ formula: richFormula(1000) })
  const sheet = weighSheet(plan, kitchen)
  expect(sheet.rows.map(({ key, what }) => `${key} ${what}`)).toEqual([
    'poolish/flour ingredient',
    'poolish/water ingredient',
    'poolish/yeast ingredient',
    'final/poolish all-of-preferment',
    'final/starter starter',
    'final/flour ingredient',
    'final/rye ingredient',
    'final/water ingredient',
    'final/salt ingredient',
    'final/yeast ingredient',
    'final/oil ingredient',
  ])
  expect(sheet.rows.every(({ cells }) => cells.length === 3)).toBe(true)
  // at 68 %: 1,000 + 680 + 20 + 4 + 40; the 0.2 g yeast in the poolish is below a 1 g scale
  expect(sheet.batches[1]?.doughGrams).toBe(1744)
  expect(sheet.batches[1]?.lines.find(({ key }) => key === 'poolish/yeast')?.trouble).toBe(
    'below-scale',
  )
})

test('without a scale weights are the targets, marked', () => {
  const sheet = weighSheet(aPlan(), [])
  expect(sheet.batches[0]?.lines.every(({ trouble }) => trouble === 'no-scale')).toBe(true)
  expect(sheet.batches[0]?.achieved).toMatchObject({ value: 62, uncertainty: 0 })
})

test('shopping: all batches, all sessions', () => {
  // three batches of 1,000 g flour, three sessions; water 620 + 680 + 740 = 2,040 a session
  const rows = shoppingTotals(aPlan(), kitchen)
  expect(
    rows.map(({ ingredientId, totalGrams }) => [ingredientId, Math.round(totalGrams)]),
  ).toEqual([
    ['flour', 9000],
    ['water', 6120],
    ['salt', 180],
    ['yeast', 36],
  ])
})

test('as weighed and as handled, by hand', () => {
  const plan = aPlan({ formula: { ...plainFormula, batchSize: { by: 'flour', flourGrams: 500 } } })
  const batch = weighSheet(plan, kitchen).batches[1]
  if (!batch) throw new Error('no batch')
  const logged = [
    { ingredientId: 'flour', prefermentId: null, grams: 502 },
    { ingredientId: 'water', prefermentId: null, grams: 345 },
  ]
  const worked = levelFromWeights(batch, hydration, logged, {
    ...none,
    dustingFlourGrams: 10,
    handWaterGrams: 4,
  })
  if (!worked.ok) throw new Error(worked.reason)
  // 345/502 = 68.7251; (345 + 4)/(502 + 10) = 68.1641
  expect(worked.weighed.value).toBeCloseTo(68.7251, 4)
  expect(worked.handled.value).toBeCloseTo(68.1641, 4)
  expect(worked).toMatchObject({ loggedLines: 2, allLines: 4 })
  expect(levelFromWeights(batch, hydration, [], none)).toEqual({
    ok: false,
    reason: 'nothing-logged',
  })
  const proof = weighSheet(aPlan({ factor: factorOf({ on: 'own' }) }), kitchen).batches[0]
  expect(proof && levelFromWeights(proof, { on: 'own' }, logged, none)).toMatchObject({
    reason: 'not-read-from-weights',
  })
})

test('what an option swaps has a row of its own, so nobody reads one flour for another', () => {
  const swap = (id: string, name: string, percent: number) => ({
    ...{ id, value: null, label: name, control: false },
    changes: [
      { what: 'ingredient' as const, ingredientId: 'flour', name },
      { what: 'hydration' as const, percent },
    ],
  })
  const plan = aPlan({
    factor: factorOf({ on: 'choice' }),
    levels: [swap('a', 'Strong flour', 68), swap('b', 'Stoneground flour', 74)],
    formula: { ...plainFormula, batchSize: { by: 'flour', flourGrams: 500 } },
  })
  const sheet = weighSheet(plan, [scale(1, 5000)])
  const rows = sheet.rows.map(({ name, cells }) => [name, ...cells.map((cell) => cell?.grams)])
  // 500 g of flour each; 68 and 74 % of it are 340 and 370 g of water.
  expect(rows.slice(0, 3)).toEqual([
    ['Strong flour', 500, undefined],
    ['Stoneground flour', undefined, 500],
    ['water', 340, 370],
  ])
  expect(new Set(sheet.rows.map(({ key }) => key)).size).toBe(sheet.rows.length)
  // A dry mix in one of the flours would bring it into the other's dough: the stock is left, in water that all have.
  const [advice] = sheet.advice
  expect([advice?.dryMix.ok, advice?.better, advice?.stock.ok]).toEqual([false, 'stock', true])
})
