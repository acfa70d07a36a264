import fc from 'fast-check'
import { expect, test } from 'vitest'
import { batchGrams } from '@/core/formula/batch-grams.ts'
import type { Formula } from '@/core/formula/formula-record.ts'
import { formulaViews } from '@/core/formula/formula-views.ts'
import { overallFromParts } from '@/core/formula/overall-from-parts.ts'
import { resizeToDough, resizeToFlour } from '@/core/formula/resize-formula.ts'
import { ingredient, plainFormula } from './a-formula.ts'

const percent = fc.double({ min: 0.01, max: 120, noNaN: true })
const anyFormula: fc.Arbitrary<Formula> = fc
  .record({
    rye: fc.double({ min: 0, max: 100, noNaN: true }),
    water: percent,
    salt: fc.double({ min: 0, max: 4, noNaN: true }),
    milk: percent,
    share: fc.double({ min: 0, max: 60, noNaN: true }),
    starterShare: fc.double({ min: 0, max: 40, noNaN: true }),
    hydration: percent,
    flourGrams: fc.double({ min: 1, max: 1e5, noNaN: true }),
  })
  .map((drawn) => ({
    ingredients: [
      ingredient('white', 'flour', 100 - drawn.rye),
      ingredient('rye', 'flour', drawn.rye),
      ingredient('water', 'water', drawn.water),
      ingredient('salt', 'salt', drawn.salt),
      { ...ingredient('milk', 'liquid', drawn.milk), waterPercent: 88 },
    ],
    preferments: [
      {
        id: 'poolish',
        name: 'poolish',
        kind: 'poolish',
        flourSharePercent: drawn.share,
        parts: [
          { ingredientId: 'white', percent: 100 },
          { ingredientId: 'water', percent: drawn.hydration },
        ],
      },
      {
        id: 'starter',
        name: 'starter',
        kind: 'starter',
        flourSharePercent: drawn.starterShare,
        parts: [
          { ingredientId: 'white', percent: 60 },
          { ingredientId: 'rye', percent: 40 },
          { ingredientId: 'water', percent: 100 },
        ],
      },
    ],
    batchSize: { by: 'flour', flourGrams: drawn.flourGrams },
  }))

test('overall equals preferments plus final dough, ingredient by ingredient and in total, to 1e-9', () => {
  fc.assert(
    fc.property(anyFormula, (formula) => {
      const views = formulaViews(formula)
      const near = (a: number, b: number) =>
        expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * Math.max(1, views.doughGrams))
      for (const [index, whole] of views.overall.entries()) {
        const ahead = views.preferments
          .flatMap(({ rows }) => rows)
          .filter(({ ingredientId }) => ingredientId === whole.ingredientId)
          .reduce((sum, { grams }) => sum + grams, 0)
        near(whole.grams, ahead + (views.finalDough.rows[index]?.grams ?? Number.NaN))
      }
      near(views.doughGrams, views.finalDough.totalGrams)
      near(
        views.doughGrams,
        views.overall.reduce((sum, { grams }) => sum + grams, 0),
      )
    }),
  )
})

test('scaling a formula scales every weight', () => {
  fc.assert(
    fc.property(anyFormula, fc.double({ min: 0.1, max: 20, noNaN: true }), (formula, factor) => {
      const before = formulaViews(formula)
      const after = formulaViews(resizeToDough(formula, before.doughGrams * factor))
      const weights = (views: typeof before) =>
        [
          ...views.overall,
          ...views.preferments.flatMap(({ rows }) => rows),
          ...views.finalDough.rows,
        ].map(({ grams }) => grams)
      const scaled = weights(after)
      for (const [index, grams] of weights(before).entries()) {
        expect(Math.abs((scaled[index] ?? Number.NaN) - grams * factor)).toBeLessThanOrEqual(
          1e-9 * Math.max(1, after.doughGrams),
        )
      }
    }),
  )
})

test('a batch by pieces: 4 × 270 g with 10 % loss takes 1,200 g of dough', () => {
  // 4 × 270 / 0.9 = 1,200; at 100 + 70 + 2 + 0.4 = 172.4 % the flour is 1,200 / 1.724 = 696.056
  const sized = plainFormula({
    batchSize: { by: 'pieces', pieces: 4, pieceGrams: 270, lossPercent: 10 },
  })
  const grams = batchGrams(sized)
  expect(grams).toMatchObject({ pieces: 4, pieceGrams: 270 })
  expect(grams.doughGrams).toBeCloseTo(1200, 9)
  expect(grams.flourGrams).toBeCloseTo(696.0557, 4)
  expect(batchGrams(resizeToDough(sized, 2400))).toMatchObject({ pieces: 4, pieceGrams: 540 })
  expect(batchGrams(resizeToFlour(sized, 500)).doughGrams).toBeCloseTo(862, 9)
})

test('a formula without flour or percents gives zeros, never NaN', () => {
  const empty = plainFormula({ ingredients: [] })
  expect(formulaViews(empty)).toMatchObject({ doughGrams: 0, overall: [] })
  const dry = plainFormula({ ingredients: [ingredient('water', 'water', 60)] })
  expect(formulaViews(dry).overall[0]?.grams).toBe(0)
})

test('a recipe whose parts hold no flour is refused where', () => {
  const ingredients = [
    { id: 'f', name: 'f', kind: 'flour' as const },
    { id: 'w', name: 'w', kind: 'water' as const },
  ]
  const soaker = {
    id: 's',
    name: 's',
    kind: 'soaker' as const,
    parts: [{ ingredientId: 'w', grams: 5 }],
  }
  const finalDough = [{ ingredientId: 'f', grams: 100 }]
  const dry = { ok: false, reason: 'no-flour' }
  expect(overallFromParts({ ingredients, finalDough: [], preferments: [] })).toMatchObject({
    ...dry,
    prefermentId: null,
  })
  expect(overallFromParts({ ingredients, finalDough, preferments: [soaker] })).toMatchObject({
    ...dry,
    prefermentId: 's',
  })
})
