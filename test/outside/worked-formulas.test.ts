import { expect, test } from 'vitest'
import type { Formula } from '@/core/formula/formula-record.ts'
import { formulaViews } from '@/core/formula/formula-views.ts'
import {
  hydrationPercent,
  prefermentedFlourPercent,
  waterFromEverythingPercent,
} from '@/core/formula/hydration.ts'
import { overallFromParts } from '@/core/formula/overall-from-parts.ts'
import { totalPercent } from '@/core/formula/totals.ts'
import { convertYeast } from '@/core/formula/yeast-conversion.ts'

const names = [
  { id: 'flour', name: 'flour', kind: 'flour' as const },
  { id: 'water', name: 'water', kind: 'water' as const },
  { id: 'salt', name: 'salt', kind: 'salt' as const },
  { id: 'yeast', name: 'yeast', kind: 'yeast' as const },
]
const amounts = (grams: Record<string, number>) =>
  Object.entries(grams).map(([ingredientId, amount]) => ({ ingredientId, grams: amount }))

function recipe(finalDough: Record<string, number>, poolish: Record<string, number>): Formula {
  const result = overallFromParts({
    ingredients: names,
    finalDough: amounts(finalDough),
    preferments: [{ id: 'poolish', name: 'poolish', kind: 'poolish', parts: amounts(poolish) }],
  })
  if (!result.ok) throw new Error(result.reason)
  return result.formula
}

const percentOf = (formula: Formula, id: string) =>
  formula.ingredients.find((one) => one.id === id)?.percent ?? Number.NaN

test('baguette with poolish, printed grams and percents (seen: wildyeastblog.com, bakers-percentage-4)', () => {
  const formula = recipe(
    { flour: 900, water: 468, yeast: 9, salt: 27 },
    { flour: 468, water: 468, yeast: 0.3 },
  )
  expect(hydrationPercent(formula)).toBeCloseTo(68.42, 2)
  expect(percentOf(formula, 'salt')).toBeCloseTo(1.974, 3)
  expect(percentOf(formula, 'yeast')).toBeCloseTo(0.68, 3)
  expect(prefermentedFlourPercent(formula)).toBeCloseTo(34.21, 2)
  expect(totalPercent(formula)).toBeCloseTo(171.07, 2)
  const views = formulaViews(formula)
  expect(views.flourGrams).toBe(1368)
  expect(views.doughGrams).toBeCloseTo(2340.3, 6)
  expect(views.finalDough.rows.map(({ grams }) => grams)).toEqual(
    [900, 468, 27, 9].map((grams) => expect.closeTo(grams, 9)),
  )
  expect(views.finalDough.rows.map(({ percent }) => percent)).toEqual(
    [100, 52, 3, 1].map((percent) => expect.closeTo(percent, 9)),
  )
  expect(views.finalDough.preferments[0]?.percent).toBeCloseTo(104, 0)
  expect(views.preferments[0]?.rows.map(({ percent }) => percent)).toEqual(
    [100, 100, 0.064].map((percent) => expect.closeTo(percent, 3)),
  )
})

test('French bread in pounds (seen: kamadoguru topic 26885, quoting a professional text)', () => {
  const formula = recipe(
    { flour: 40.12, water: 19.32, salt: 1.19, yeast: 0.72 },
    { flour: 19.32, water: 19.32, yeast: 0.02 },
  )
  expect(formulaViews(formula).flourGrams).toBeCloseTo(59.44, 9)
  expect(hydrationPercent(formula)).toBeCloseTo(65, 1)
  expect(percentOf(formula, 'salt')).toBeCloseTo(2, 1)
  expect(percentOf(formula, 'yeast')).toBeCloseTo(1.24, 2)
  const final = formulaViews(formula).finalDough
  expect(final.rows.map(({ percent }) => percent?.toFixed(1))).toEqual([
    '100.0',
    '48.2',
    '3.0',
    '1.8',
  ])
  expect(final.preferments[0]?.percent).toBeCloseTo(96, 0)
})

test('prefermented flour of a third sheet in pounds (seen: bread-bakers v107.n003.13)', () => {
  const formula = recipe({ flour: 39.33 }, { flour: 16.85, water: 16.85, yeast: 0.02 })
  expect(formulaViews(formula).flourGrams).toBeCloseTo(56.18, 9)
  expect(prefermentedFlourPercent(formula)).toBeCloseTo(29.99, 2)
})

test('150 g of 100 % starter in a 500 g flour, 80 % dough (seen: the same Kamado thread)', () => {
  const formula: Formula = {
    ingredients: [
      { id: 'flour', name: 'flour', kind: 'flour', percent: 100 },
      { id: 'water', name: 'water', kind: 'water', percent: 80 },
      { id: 'salt', name: 'salt', kind: 'salt', percent: 2 },
    ],
    preferments: [
      {
        id: 'starter',
        name: 'starter',
        kind: 'starter',
        flourSharePercent: 15,
        parts: [
          { ingredientId: 'flour', percent: 100 },
          { ingredientId: 'water', percent: 100 },
        ],
      },
    ],
    batchSize: { by: 'flour', flourGrams: 500 },
  }
  const views = formulaViews(formula)
  expect(views.finalDough.rows.map(({ grams }) => grams)).toEqual([425, 325, 10])
  expect(views.preferments[0]).toMatchObject({ totalGrams: 150, flourGrams: 75, waterGrams: 75 })
  expect(views.finalDough.totalGrams).toBeCloseTo(910, 9)
})

test.each([50, 80, 100, 125, 166])(
  'a %d %% starter S splits into S/(1+h) flour and S h/(1+h) water (facts 1.7, exact identity)',
  (hydration) => {
    const formula: Formula = {
      ingredients: [
        { id: 'flour', name: 'flour', kind: 'flour', percent: 100 },
        { id: 'water', name: 'water', kind: 'water', percent: 80 },
      ],
      preferments: [
        {
          ...{ id: 'starter', name: 'starter', kind: 'starter', flourSharePercent: 20 },
          parts: [
            { ingredientId: 'flour', percent: 100 },
            { ingredientId: 'water', percent: hydration },
          ],
        },
      ],
      batchSize: { by: 'flour', flourGrams: 500 },
    }
    const { preferments, finalDough } = formulaViews(formula)
    const starterGrams = preferments[0]?.totalGrams ?? 0
    const h = hydration / 100
    const flourInIt = starterGrams / (1 + h)
    const waterInIt = (starterGrams * h) / (1 + h)
    expect(preferments[0]?.flourGrams).toBeCloseTo(flourInIt, 9)
    expect(preferments[0]?.waterGrams).toBeCloseTo(waterInIt, 9)
    const [flour, water] = finalDough.rows.map(({ grams }) => grams)
    // The dough they make: (W + S h/(1 + h)) / (F + S/(1 + h)) = 80 %.
    expect(((water ?? 0) + waterInIt) / ((flour ?? 0) + flourInIt)).toBeCloseTo(0.8, 12)
  },
)

test('Pizza Napoletana amounts: 1 L water, 1,800 g flour, 50-55 g salt, 3 g fresh yeast (annex, from memory)', () => {
  for (const [salt, saltPercent, total, grams] of [
    [50, 2.78, 158.5, 2853],
    [55, 3.06, 158.8, 2858],
  ] as const) {
    const result = overallFromParts({
      ingredients: names,
      finalDough: amounts({ flour: 1800, water: 1000, salt, yeast: 3 }),
      preferments: [],
    })
    if (!result.ok) throw new Error(result.reason)
    expect(hydrationPercent(result.formula)).toBeCloseTo(55.56, 2)
    expect(percentOf(result.formula, 'salt')).toBeCloseTo(saltPercent, 2)
    expect(percentOf(result.formula, 'yeast')).toBeCloseTo(0.167, 3)
    expect(totalPercent(result.formula)).toBeCloseTo(total, 1)
    expect(formulaViews(result.formula).doughGrams).toBeCloseTo(grams, 9)
  }
})

test('salt 20-25 g and yeast 1-20 g on 1,000 g flour are 2-2.5 % and 0.1-2 % (common practice, no source)', () => {
  const made = (salt: number, yeast: number) => {
    const result = overallFromParts({
      ingredients: names,
      finalDough: amounts({ flour: 1000, water: 650, salt, yeast }),
      preferments: [],
    })
    if (!result.ok) throw new Error(result.reason)
    return [percentOf(result.formula, 'salt'), percentOf(result.formula, 'yeast')]
  }
  expect(made(20, 1)).toEqual([2, 0.1])
  expect(made(25, 20)).toEqual([2.5, 2])
})

test('milk and honey count to the water from everything alone (88 and 17.1 g per 100 g: USDA Handbook 8, FoodData Central)', () => {
  const formula: Formula = {
    ingredients: [
      { id: 'flour', name: 'flour', kind: 'flour', percent: 100 },
      { id: 'water', name: 'water', kind: 'water', percent: 40 },
      { id: 'milk', name: 'milk', kind: 'liquid', percent: 25, waterPercent: 88 },
      { id: 'honey', name: 'honey', kind: 'other', percent: 10, waterPercent: 17.1 },
    ],
    preferments: [],
    batchSize: { by: 'flour', flourGrams: 1000 },
  }
  expect(hydrationPercent(formula)).toBe(40)
  // 40 + 25 × 0.88 + 10 × 0.171 = 63.71
  expect(waterFromEverythingPercent(formula)).toBeCloseTo(63.71, 10)
})

test('fresh yeast to active dry × 0.4, to instant × 0.33, and the disagreement is told (seen: ckbk conversions)', () => {
  expect(convertYeast(30, 'fresh', 'active-dry')).toMatchObject({ grams: 12, factor: 0.4 })
  const instant = convertYeast(30, 'fresh', 'instant')
  expect(instant.grams).toBeCloseTo(9.9, 10)
  expect(instant.alsoPublished).toBe(0.4)
  expect(convertYeast(12, 'active-dry', 'fresh').grams).toBeCloseTo(30, 10)
  expect(convertYeast(4, 'active-dry', 'instant')).toMatchObject({ grams: 3, source: 'practice' })
  expect(convertYeast(3, 'instant', 'instant')).toMatchObject({ grams: 3, factor: 1 })
})
