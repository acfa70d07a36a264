import { expect, test } from 'vitest'
import { weighingItems } from '@/core/fairness/items/weighing-items.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { aPlan, plainFormula, scale } from '../../trial/a-plan.ts'

test('a dry mix or stock is offered as a remedy only where the scales can make it', () => {
  const offered = (step: number, flourGrams: number) => {
    const batchSize = { by: 'flour' as const, flourGrams }
    const plan = aPlan({ formula: { ...plainFormula, batchSize }, kitchenIds: [] })
    const items = weighingItems(plan, weighSheet(plan, [scale(step, 5000)]))
    const yeast = items.find(({ key }) => key.includes('yeast'))
    return yeast?.remedies.map(({ code }) => code)
  }
  // 0.4 % of 500 g is 2 g; of 100 g it is 0.4 g, for which a 5 g scale would need more flour than the batches take.
  expect(offered(1, 500)).toEqual(['share-dose', 'finer-scale'])
  expect(offered(5, 100)).toEqual(['finer-scale'])
})

test('a dose that was to be shared and cannot be is still a coarse weight', () => {
  const batchSize = { by: 'flour' as const, flourGrams: 100 }
  const sharedDoses = [{ ingredientId: 'yeast', by: 'dry-mix' as const }]
  const plan = aPlan({ formula: { ...plainFormula, batchSize }, kitchenIds: [], sharedDoses })
  const sheet = weighSheet(plan, [scale(5, 5000)])
  expect(sheet.doses).toMatchObject([{ ok: false, reason: 'scales-too-coarse' }])
  const yeast = weighingItems(plan, sheet).find(({ key }) => key === 'coarse-dose/yeast')
  // 5/√6 = 2.04 g of uncertainty on 0.4 g
  expect(yeast?.amount?.value).toBeCloseTo(510.3, 1)
  expect([yeast?.severity, yeast?.remedies]).toEqual(['fix', [{ code: 'finer-scale' }]])
})
