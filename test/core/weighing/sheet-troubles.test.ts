import { expect, test } from 'vitest'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { sheetTroubleTexts } from '@/core/wording/weighing/weigh-trouble-text.ts'
import { doseAdviceText } from '@/core/wording/weighing/weighing-text.ts'
import { aPlan, levelsOf, plainFormula, scale } from '../trial/a-plan.ts'

const textsOn = (plan: ReturnType<typeof aPlan>, ...scales: ReturnType<typeof scale>[]) =>
  sheetTroubleTexts(weighSheet({ ...plan, kitchenIds: [] }, scales), plan)

test('a weight past every scale’s capacity is said once, with its goes and the mend', () => {
  const plan = aPlan({
    formula: { ...plainFormula, batchSize: { by: 'flour', flourGrams: 1000 } },
    levels: levelsOf([39, 70], 70),
  })
  // 1,000 g of flour on 400 g: three goes. Water 390 g fits, 700 g takes two goes.
  const small = scale(0.01, 400)
  expect(textsOn(plan, small)).toEqual([
    'No scale here holds so much: on scale 0.01, which holds 400 g, weigh water in two goes, white flour in three goes. Choose a scale that holds more to weigh it at once.',
  ])
  expect(textsOn(plan, scale(0.01, 500))).toEqual([
    'No scale here holds so much: on scale 0.01, which holds 500 g, weigh white flour and water in two goes each. Choose a scale that holds more to weigh it at once.',
  ])
  expect(textsOn(plan, small, scale(1, 5000))).toEqual([])
})

test('a shared dose’s own flour counts among what is too much for the scale', () => {
  const dose = { ingredientId: 'salt', by: 'stock' as const, stockGrams: 60, stockWaterGrams: 540 }
  const plan = aPlan({
    formula: { ...plainFormula, batchSize: { by: 'flour', flourGrams: 300 } },
    sharedDoses: [dose],
  })
  expect(textsOn(plan, scale(0.01, 500)).join(' ')).toContain(
    'weigh water for the stock in two goes',
  )
})

test('flour too little for the scale is said, for which no mix or stock is advised', () => {
  const rye = (percent: number) => ({
    ...plainFormula,
    ingredients: [
      { id: 'rye', name: 'rye', kind: 'flour' as const, percent },
      ...plainFormula.ingredients.map((one) =>
        one.kind === 'flour' ? { ...one, percent: 100 - percent } : one,
      ),
    ],
    batchSize: { by: 'flour' as const, flourGrams: 500 },
  })
  // 1 % of 500 g is 5 g: 1/√6 = 0.408 g of it is 8.2 %. 0.05 % is 0.25 g, which shows as 0.
  expect(textsOn(aPlan({ formula: rye(1) }), scale(1, 5000))).toEqual([
    'rye: 5.00 g is uncertain by 8.2 % on these scales. Use a finer scale or make larger batches.',
  ])
  expect(textsOn(aPlan({ formula: rye(0.05) }), scale(1, 5000))).toEqual([
    'rye: 0.25 g is less than these scales can show. Use a finer scale or make larger batches.',
  ])
})

test('yeast that the scale would show as nothing is said to be so by the advice alone', () => {
  const formula = { ...plainFormula, batchSize: { by: 'flour' as const, flourGrams: 100 } }
  const plan = aPlan({ formula, kitchenIds: [] })
  const scales = [scale(1, 5000)]
  const sheet = weighSheet(plan, scales)
  // 0.4 % of 100 g
  const yeast = sheet.advice.find(({ ingredientId }) => ingredientId === 'yeast')
  expect(yeast && doseAdviceText(yeast, plan)).toContain(
    'instant yeast: 0.40 g is less than these scales can show.',
  )
  expect(sheetTroubleTexts(sheet, plan)).toEqual([])
})

test('a stock that brings more water than the dough takes is said', () => {
  // 2 % salt of 300 g is 6 g; a stock of 1 g in 200 g holds it in 1206 g, with 1200 g of water where the dough takes about 200.
  const dose = { ingredientId: 'salt', by: 'stock' as const, stockGrams: 1, stockWaterGrams: 200 }
  const plan = aPlan({
    formula: { ...plainFormula, batchSize: { by: 'flour', flourGrams: 300 } },
    sharedDoses: [dose],
  })
  expect(textsOn(plan, scale(0.1, 5000)).join(' ')).toMatch(
    /water: −\d+\.\d\d g cannot be weighed: stock, dry mix or preferment bring more of it/,
  )
})
