import { expect, test } from 'vitest'
import { planPlaceText } from '@/core/wording/plan/plan-place-text.ts'
import { madePlan } from '../../made-plan.ts'

test('ingredients, steps and responses are named, other places are not', () => {
  const plan = madePlan()
  const [ingredient] = plan.formula.ingredients
  expect(planPlaceText('/formula/ingredients/0/percent', plan)).toBe(ingredient?.name)
  expect(planPlaceText('/steps/0/handsSeconds', plan)).toBe(plan.steps[0]?.name)
  expect(planPlaceText('/responses/0', plan)).toBe(plan.responses[0]?.name)
  expect(planPlaceText('/levels/0/value', plan)).toBe('')
  expect(planPlaceText('/steps/99', plan)).toBe('')
})
