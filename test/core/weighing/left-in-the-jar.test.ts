import { expect, test } from 'vitest'
import type { Formula } from '@/core/formula/formula-record.ts'
import { shoppingTotals } from '@/core/weighing/shopping-totals.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { writtenSheet } from '@/core/weighing/written-sheet.ts'
import { aPlan, levelsOf, plainFormula, scale } from '../trial/a-plan.ts'

const formula: Formula = {
  ...plainFormula,
  preferments: [
    {
      ...{ id: 'poolish', name: 'poolish', kind: 'poolish', flourSharePercent: 20 },
      ...{ clingsGrams: 10 },
      parts: [
        { ingredientId: 'flour', percent: 100 },
        { ingredientId: 'water', percent: 100 },
      ],
    },
  ],
}
const plan = aPlan({ formula, kitchenIds: [], plannedSessions: 1, levels: levelsOf([70], 70) })
const scales = [scale(0.1, 5000)]

test('a jar that keeps 10 g of a poolish gets 10 g more, and the dough is what the formula says', () => {
  // 200 g flour and 200 g water go in; 410 g are made, so 205 g of each; in the dough 1000 g flour, 700 g water, 24 g others
  const [batch] = weighSheet(plan, scales).batches
  const grams = Object.fromEntries((batch?.lines ?? []).map((line) => [line.key, line.grams]))
  expect(grams['poolish/flour']).toBeCloseTo(205, 9)
  expect(grams['poolish/water']).toBeCloseTo(205, 9)
  expect(grams['final/poolish']).toBeCloseTo(400, 9)
  expect(grams['final/flour']).toBeCloseTo(800, 9)
  expect(batch?.doughGrams).toBeCloseTo(1724, 6)
  expect(batch?.achieved?.value).toBeCloseTo(70, 9)
  // 5 g of flour and of water more are bought
  const bought = shoppingTotals(plan, scales)
  expect(bought.find(({ ingredientId }) => ingredientId === 'flour')?.totalGrams).toBeCloseTo(1005)
  expect(bought.find(({ ingredientId }) => ingredientId === 'water')?.totalGrams).toBeCloseTo(705)
  const { weights } = writtenSheet(weighSheet(plan, scales), '%')
  expect(weights.find(({ key }) => key === 'final/poolish')).toMatchObject({
    ...{ head: 'poolish, all that comes out (10 g more made, for the jar)', cells: ['400.0'] },
  })
})
