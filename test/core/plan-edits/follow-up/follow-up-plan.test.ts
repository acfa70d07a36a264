import { expect, test } from 'vitest'
import { tellApartReach } from '@/core/design/tell-apart-reach.ts'
import { planDifferences } from '@/core/findings/pooled/formula-differences.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { confirmingPlan } from '@/core/plan-edits/follow-up/follow-up-plan.ts'
import { narrowingPlan } from '@/core/plan-edits/follow-up/narrowing-plan.ts'
import { repeatingPlan } from '@/core/plan-edits/follow-up/repeating-plan.ts'
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

test('confirming deals triangles, in as many sessions as give the answers that are needed', () => {
  // Half tell apart, the others guess: a right answer has chance 1/2 + 1/2 · 1/3 = 2/3. The binomial tail by hand: of 16 answers nine
  // are significant (P(X ≥ 9) = .0500 by guessing); eight tasters in three sessions give 24, thirteen needed (FAO V7180E, appendix A).
  const next = confirmingPlan(plan, level(70), level(74))
  expect(next.tellApart).toEqual({ test: 'triangle', levelIds: [level(70).id, level(74).id] })
  const reach = tellApartReach(next)
  expect(reach?.power).toBeGreaterThanOrEqual(0.8)
  const less = tellApartReach({ ...next, plannedSessions: next.plannedSessions - 1 })
  expect(next.plannedSessions === 2 || (less?.enough ?? 0) > (less?.answers ?? 0)).toBe(true)
})

const narrowed = { newId, kitchen: [], unitVariance: null }

test('narrowing goes across the stretch of the best in steps that can be weighed, with the control kept', () => {
  // From 70 to 78 with five levels: steps of 8 / 4 = 2.
  const next = narrowingPlan(plan, { low: 70, high: 78 }, narrowed)
  expect(valuesOf(next)).toEqual([70, 72, 74, 76, 78])
  expect(next.levels.filter(({ control }) => control).map(({ value }) => value)).toEqual([74])
  expect(next.question).toBe(`Narrow: ${plan.question}`)
  expect(planProblems(next).map(({ reason }) => reason)).toEqual(['no-expectation'])
})

test('narrowing takes fewer levels where the scales would not keep them apart', () => {
  const { kitchen } = sampleTrial('focaccia-hydration')
  const next = narrowingPlan(plan, { low: 73.6, high: 74.4 }, { ...narrowed, kitchen })
  expect(next.levels).toHaveLength(3)
  const wide = narrowingPlan(plan, { low: 66, high: 82 }, { ...narrowed, kitchen })
  expect(valuesOf(wide)).toEqual([66, 70, 74, 78, 82])
})

test('narrowing takes the sessions that the learned spread needs for 8 in 10', () => {
  // Closed form of R3 in the table of the rules: five levels, eight tasters, the usual spread (0.4² + 0.6² + 1.2²/8 = 0.70),
  // margin 1, named before the mix: 14 sessions for 80 %; margin 2: four.
  const unitVariance = 0.4 ** 2 + 0.6 ** 2 + 1.2 ** 2 / 8
  const withMargin = (margin: number) => ({
    ...plan,
    responses: plan.responses.map((one) => ({ ...one, margin })),
  })
  const sessions = (margin: number) =>
    narrowingPlan(withMargin(margin), { low: 70, high: 78 }, { ...narrowed, unitVariance })
      .plannedSessions
  expect(sessions(1)).toBe(14)
  expect(sessions(2)).toBe(4)
})

test('a trial from elsewhere is repeated with the own kitchen and tasters, levels and method as they were', () => {
  const own: KitchenThing[] = [
    { kind: 'taster', id: 'own-taster', initials: 'ZZ' },
    ...sampleTrial('pan-loaf-salt').kitchen.filter(({ kind }) => kind === 'scale'),
  ]
  const next = repeatingPlan(plan, own)
  expect(valuesOf(next)).toEqual(valuesOf(plan))
  expect(next.steps).toEqual(plan.steps)
  expect(next.tasters).toEqual([{ tasterId: 'own-taster', knows: false }])
  expect(next.kitchenIds).toEqual(own.slice(1).map(({ id }) => id))
  expect(next.formula.ingredients.some((one) => one.flourLotId !== undefined)).toBe(false)
  expect(planDifferences(plan, next)).toEqual([])
})
