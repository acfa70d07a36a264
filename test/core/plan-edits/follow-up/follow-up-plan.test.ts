import { expect, test } from 'vitest'
import { confirmingPlan, narrowingPlan } from '@/core/plan-edits/follow-up/follow-up-plan.ts'
import { planProblems } from '@/core/trial/plan-problems.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { sampleTrial } from '../../findings/sample-trial.ts'

const plan = planInForce(sampleTrial('focaccia-hydration'))
const level = (value: number) => {
  const found = plan.levels.find((each) => each.value === value)
  if (!found) throw new Error(`the sample has no level ${value}`)
  return found
}
let made = 0
const newId = () => `new-${++made}`
const valuesOf = ({ levels }: typeof plan) => levels.map(({ value }) => value)

test('confirming keeps the winner and the control alone, and takes the old guess back', () => {
  const next = confirmingPlan(plan, level(70), level(74))
  expect(valuesOf(next)).toEqual([70, 74])
  expect(next.levels.filter(({ control }) => control).map(({ value }) => value)).toEqual([74])
  expect(next.expectation).toBeNull()
  expect(next.question).toBe(`Confirm: ${plan.question}`)
  expect(planProblems(next).map(({ reason }) => reason)).toEqual(['no-expectation'])
})

test('where neither of the two was the control, the rival becomes it', () => {
  const next = confirmingPlan(plan, level(70), level(78))
  expect(next.levels.map(({ value, control }) => [value, control])).toEqual([
    [70, false],
    [78, true],
  ])
})

test('narrowing takes half the span around the best, in steps that can be weighed, with the control kept', () => {
  // Levels 66 to 82: the span is 16, half of it 8, so 70.4 to 78.4 around 74.4, in steps of 8 / 4 = 2.
  const next = narrowingPlan(plan, 74.4, newId)
  const values = valuesOf(next)
  expect(values).toContain(74)
  expect(next.levels.filter(({ control }) => control).map(({ value }) => value)).toEqual([74])
  const others = values.filter((value) => value !== 74)
  expect(Math.min(...others.map(Number))).toBeCloseTo(70.4, 0)
  expect(Math.max(...others.map(Number))).toBeCloseTo(78.4, 0)
  for (const value of others) expect(Number.isInteger(Number(value))).toBe(true)
  expect(new Set(values).size).toBe(values.length)
  expect(values).toEqual(values.toSorted((a, b) => Number(a) - Number(b)))
  expect(planProblems(next).map(({ reason }) => reason)).toEqual(['no-expectation'])
})
