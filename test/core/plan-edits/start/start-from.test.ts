import { expect, test } from 'vitest'
import { emptyPlan, planFromOther } from '@/core/plan-edits/start/start-from.ts'
import { planProblems } from '@/core/trial/plan-problems.ts'
import { planShape } from '@/core/trial/plan-record.ts'
import { planOfTest } from '../plan-of-test.ts'

test('an empty page is a whole record with nothing on it but flour and water, and says what is to be filled', () => {
  const plan = emptyPlan(planOfTest())
  expect(planShape.safeParse(plan).success).toBe(true)
  expect(plan.formula.ingredients.map(({ kind }) => kind)).toEqual(['flour', 'water'])
  expect([plan.levels, plan.steps, plan.responses]).toEqual([[], [], []])
  const stops = planProblems(plan).filter(({ severity }) => severity === 'stop')
  expect(stops.map(({ path }) => path)).toContain('/levels')
})

test('another plan comes with its contents; its place, its bet, and what this notebook has not stay away', () => {
  const own = planOfTest()
  const other = {
    ...planOfTest(),
    id: 'other',
    trialId: 'other-trial',
    question: 'Saltier?',
    expectation: { direction: 'rises' as const, bestGuess: 72 },
    tasters: [
      { tasterId: 'here', knows: false },
      { tasterId: 'elsewhere', knows: false },
    ],
    kitchenIds: ['elsewhere'],
    accepted: ['piece-mass'],
  }
  const taster = { id: 'here', kind: 'taster' as const, initials: 'KL' }
  const plan = planFromOther(own, other, [taster])
  expect(planShape.safeParse(plan).success).toBe(true)
  expect([plan.id, plan.trialId, plan.question]).toEqual([own.id, own.trialId, 'Saltier?'])
  expect(plan.expectation).toBeNull()
  expect(plan.tasters).toEqual([{ tasterId: 'here', knows: false }])
  expect([plan.kitchenIds, plan.accepted]).toEqual([[], []])
})
