import { expect, test } from 'vitest'
import { startingPlan } from '@/core/plan-edits/start/starting-plan.ts'
import { planShape } from '@/core/trial/plan-record.ts'

function made() {
  let count = 0
  const given: string[] = []
  const newId = () => {
    count += 1
    given.push(`id-${count}`)
    return `id-${count}`
  }
  return { plan: startingPlan({ newId, at: 0, zone: 'Europe/Rome' }), given }
}

test('the plan of a new trial fits the shape of a plan', () => {
  expect(planShape.parse(made().plan)).toEqual(made().plan)
})

test('every id handed in is used once, and the factor and main response name things of the plan', () => {
  const { plan, given } = made()
  const own = [
    plan.id,
    plan.trialId,
    ...plan.levels.map((level) => level.id),
    ...plan.formula.ingredients.map((ingredient) => ingredient.id),
    ...plan.steps.map((step) => step.id),
    ...plan.responses.map((response) => response.id),
  ]
  expect(own).toHaveLength(given.length)
  expect(new Set(own)).toEqual(new Set(given))
  expect(plan.factor.acts).toEqual({
    on: 'hydration',
    ingredientId: plan.formula.ingredients[1]?.id,
  })
  expect(plan.responses.map((response) => response.id)).toContain(plan.mainResponseId)
})

test('it has one control, at the water the formula has, and flours of 100 %', () => {
  const { plan } = made()
  const controls = plan.levels.filter((level) => level.control).map((level) => level.value)
  const percentOf = (kind: string) =>
    plan.formula.ingredients
      .filter((ingredient) => ingredient.kind === kind)
      .reduce((sum, ingredient) => sum + ingredient.percent, 0)
  expect(controls).toEqual([percentOf('water')])
  expect(percentOf('flour')).toBe(100)
})
