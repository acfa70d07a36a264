import fc from 'fast-check'
import { expect, test } from 'vitest'
import { doseAmounts } from '@/core/weighing/dose-amounts.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { doseAdviceText } from '@/core/wording/weighing/weighing-text.ts'
import { aPlan, plainFormula, scale } from '../trial/a-plan.ts'

const withYeast = (percent: number, flourGrams: number) =>
  aPlan({
    formula: {
      ...plainFormula,
      ingredients: plainFormula.ingredients.map((one) =>
        one.kind === 'yeast' ? { ...one, percent } : one,
      ),
      batchSize: { by: 'flour', flourGrams },
    },
    kitchenIds: [],
  })

function advised(percent: number, flourGrams: number, ...scales: ReturnType<typeof scale>[]) {
  const plan = withYeast(percent, flourGrams)
  const advice = weighSheet(plan, scales).advice.find(
    ({ ingredientId }) => ingredientId === 'yeast',
  )
  return { advice, text: advice ? doseAdviceText(advice, plan) : '' }
}

test('never more carrier than half of what the batches take, with a tenth over and a step of the scale', () => {
  fc.assert(
    fc.property(
      fc.constantFrom('stock' as const, 'dry-mix' as const),
      fc.double({ min: 0.01, max: 20, noNaN: true }),
      fc.double({ min: 50, max: 2000, noNaN: true }),
      fc.constantFrom(0.01, 0.1, 1, 2, 5),
      fc.integer({ min: 2, max: 6 }),
      (by, ingredientGrams, carrierGrams, step, batches) => {
        const asked = Array.from({ length: batches }, (_, at) => ({
          ...{ key: String(at), ingredientGrams, carrierGrams },
        }))
        const made = doseAmounts(by, asked, [scale(step, 10_000)])
        if (!made.ok) return
        const most = batches * carrierGrams * 0.5 * 1.1
        expect(made.carrier.grams).toBeLessThanOrEqual(most + step)
        expect(made.ingredient.grams).toBeGreaterThanOrEqual(batches * ingredientGrams * 1.1 - 1e-9)
      },
    ),
  )
})

test('a coarse scale gets the surest mix within that, and is told which step would do better', () => {
  // Three batches of 500 g flour: 0.55 × 1,500 = 825 g of it at most. 0.7 % is 3.5 g of yeast, u = 5/√6 = 2.04 g.
  const { advice, text } = advised(0.7, 500, scale(5, 5000))
  if (!advice?.dryMix.ok) throw new Error('no dry mix')
  expect(advice.dryMix.carrier.grams).toBeLessThanOrEqual(825)
  // 1 to 19: a dose of 70 g, 2.9 % off, and 40 g of yeast, 5.1 %; together 5.9 %
  expect(advice.dryMix.ingredient.grams).toBe(40)
  expect(advice.dryMix.relativeUncertainty).toBeCloseTo(0.059, 2)
  expect(text).toMatch(/A scale that shows 2 g would do better\.$/)
})

test('where no mix would be worth its flour or water, that is said, with the step that would do', () => {
  // 0.05 % of 300 g is 0.15 g on a scale of 5 g: no dose of at most half the flour comes near
  const { advice, text } = advised(0.05, 300, scale(5, 5000))
  expect(advice?.dryMix).toMatchObject({ ok: false, reason: 'scales-too-coarse' })
  expect(advice?.stock).toMatchObject({ ok: false, reason: 'scales-too-coarse' })
  const step = advice?.mendingStepGrams ?? Number.NaN
  expect(text).toBe(
    `instant yeast: 0.15 g is less than these scales can show. No dry mix or stock mends that with these scales. A scale that shows ${step} g would do, or larger batches.`,
  )
  // and it does: with that scale too, a weight or a mix comes to 5 %; with the next coarser it does not
  const after = (grams: number) => advised(0.05, 300, scale(5, 5000), scale(grams, grams * 20_000))
  const { better, dryMix, stock } = after(step).advice ?? {}
  const made = better === 'stock' ? stock : dryMix
  expect(made === undefined || (made.ok && made.relativeUncertainty <= 0.05)).toBe(true)
  expect(after(step * 2.5).advice?.mendingStepGrams).not.toBeNull()
})

test('a carrier of which a batch has hardly any is refused', () => {
  const asked = [{ key: 'a', ingredientGrams: 3, carrierGrams: 10 }]
  expect(doseAmounts('dry-mix', asked, [scale(0.1, 5000)])).toEqual({
    ok: false,
    reason: 'too-little-carrier',
  })
})
