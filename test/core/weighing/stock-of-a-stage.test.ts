import { expect, test } from 'vitest'
import type { Formula } from '@/core/formula/formula-record.ts'
import { formulaViews } from '@/core/formula/formula-views.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { sharedDoseText } from '@/core/wording/weighing/weighing-text.ts'
import { aPlan, levelsOf, plainFormula, scale } from '../trial/a-plan.ts'

const formula: Formula = {
  ...plainFormula,
  preferments: [
    {
      ...{ id: 'poolish', name: 'poolish', kind: 'poolish', flourSharePercent: 30 },
      parts: [
        { ingredientId: 'flour', percent: 100 },
        { ingredientId: 'water', percent: 100 },
        { ingredientId: 'yeast', percent: 0.2 },
      ],
    },
  ],
  batchSize: { by: 'flour', flourGrams: 500 },
}
const scales = [scale(1, 5000), scale(0.1, 500)]
const sheetOf = (by: 'stock' | 'dry-mix') =>
  weighSheet(
    aPlan({
      ...{ formula, kitchenIds: [], levels: levelsOf([68, 74], 68) },
      sharedDoses: [{ ingredientId: 'yeast', by }],
    }),
    scales,
  )

test('yeast of a poolish and of the dough comes from a stock each, one dose a dough from its own', () => {
  const sheet = sheetOf('stock')
  expect(sheet.doses.map(({ stage }) => stage)).toEqual([
    { prefermentId: 'poolish' },
    { prefermentId: null },
  ])
  const [ahead, fresh] = sheet.doses
  if (!ahead?.ok || !fresh?.ok) throw new Error('no stock')
  // 0.2 % of 150 g is 0.3 g ahead; 0.4 % of 500 g less that is 1.7 g at the mix; each for two doughs
  expect(ahead.doses).toHaveLength(2)
  expect(fresh.doses).toHaveLength(2)
  for (const { ingredientGrams } of ahead.doses) expect(ingredientGrams).toBeCloseTo(0.3, 2)
  for (const { ingredientGrams } of fresh.doses) expect(ingredientGrams).toBeCloseTo(1.7, 1)
  for (const batch of sheet.batches) {
    expect(Math.abs(batch.doughGrams - formulaViews(batch.formula).doughGrams)).toBeLessThan(1)
    expect(batch.lines.filter(({ what }) => what === 'dose')).toHaveLength(2)
    expect(Math.abs((batch.achieved?.value ?? 0) - (batch.planned ?? 0))).toBeLessThan(0.2)
  }
  const [one, other] = sheet.doses.map((dose) => sharedDoseText(dose, { formula }))
  expect(one).toContain(', for the poolish, one stock for all')
  expect(other).toContain(', for the dough, made fresh at its mix, one stock for all')
})

test('a dry mix keeps, so one serves both stages', () => {
  expect(sheetOf('dry-mix').doses.map(({ stage }) => stage)).toEqual([null])
})
