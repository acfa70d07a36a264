import { expect, test } from 'vitest'
import type { Plan } from '@/core/trial/plan-record.ts'
import { fairnessText } from '@/core/wording/fairness/fairness-text.ts'
import { itemOf, itemsOf, waterPlanOf } from './fair-plan.ts'

const held = (celsius?: number): Plan => {
  const plan = waterPlanOf()
  const later = { id: 'later', name: 'Held-back water', kind: 'water' as const, percent: 5 }
  const ingredients = [
    ...plan.formula.ingredients,
    celsius === undefined ? later : { ...later, celsius },
  ]
  return {
    ...plan,
    formula: { ...plan.formula, ingredients, batchSize: { by: 'flour', flourGrams: 800 } },
  }
}

test('water held back is asked for its temperature, and fine with it', () => {
  const plan = held()
  const item = itemOf(itemsOf(plan), 'second-water')
  if (!item) throw new Error('no item')
  // 5 % of 800 g of flour is 40 g at every level
  expect(item).toMatchObject({ severity: 'know', data: { low: 40, high: 40, celsius: null } })
  expect(fairnessText(item, plan).sentence).toContain('40 g a batch, its temperature is not said')
  expect(itemOf(itemsOf(held(20)), 'second-water')).toMatchObject({ severity: 'fine' })
  expect(itemOf(itemsOf(waterPlanOf()), 'second-water')).toBeUndefined()
})
