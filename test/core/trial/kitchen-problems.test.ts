import { expect, test } from 'vitest'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { planProblems } from '@/core/trial/plan-problems.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { planProblemText } from '@/core/wording/plan/plan-problem-text.ts'
import { aPlan, factorOf, kitchen, levelsOf, step } from './a-plan.ts'

const inKitchen: KitchenThing[] = [
  ...kitchen,
  { id: 'oven', kind: 'oven', name: 'home oven', places: 2, maxCelsius: 250 },
  { id: 'fridge', kind: 'fridge', name: 'small fridge', celsius: 5, places: 2 },
]
const heatOf = (unitOfMeasure: string) => ({
  ...factorOf({ on: 'bake-temperature', stepId: 'bake' }, 'piece'),
  ...{ unitOfMeasure, splitsAt: 'oven' as const },
})
const said = (change: Partial<Plan>) => planProblems(aPlan(change), inKitchen).map(planProblemText)
const bakeAt = (celsius: number) => ({ ...step('bake', 'bake', 1200), celsius })

const seen = (change: Partial<Plan>) =>
  planProblems(aPlan(change), inKitchen).map(
    ({ severity, path, reason }) => `${severity} ${path} ${reason}`,
  )

test.each<[string, Partial<Plan>, string]>([
  [
    'an oven below freezing',
    { factor: heatOf('°C'), levels: levelsOf([-60, 200, 220], 200) },
    'ask /levels/0/value oven-heat-unusual',
  ],
  [
    'an oven of 900 °C',
    { factor: heatOf('°C'), levels: levelsOf([200, 220, 900], 200) },
    'ask /levels/2/value oven-heat-unusual',
  ],
  [
    'a bake of 21 °C',
    { steps: [step('mix', 'mix', 600), bakeAt(21)] },
    'ask /steps/1/celsius oven-heat-unusual',
  ],
])('%s', (_, change, expected) => {
  expect(seen(change)).toContain(expected)
})

test('asks about oven temperatures outside the usual, in the unit they are written in', () => {
  const levels = levelsOf([150, 450, 1000], 450)
  // 100 to 500 °C are 212 to 932 °F.
  expect(said({ factor: heatOf('°F'), levels })).toEqual(
    expect.arrayContaining([
      '150 °F is outside the usual 212 to 932 °F of an oven. Is that meant?',
      '1000 °F is outside the usual 212 to 932 °F of an oven. Is that meant?',
    ]),
  )
  const usual = levelsOf([100, 230, 500], 230)
  expect(seen({ factor: heatOf('°C'), levels: usual }).join()).not.toContain('oven')
})

test('asks where the chosen oven does not get as hot', () => {
  const kitchenIds = ['scale-1', 'oven']
  const levels = levelsOf([230, 250, 270], 250)
  expect(said({ factor: heatOf('°C'), levels, kitchenIds, placesPerLoad: 2 })).toContain(
    'home oven goes up to 250 °C, not to 270 °C. Is that meant?',
  )
  const steps = [step('mix', 'mix', 600), bakeAt(260)]
  expect(said({ steps, kitchenIds })).toContain(
    'home oven goes up to 250 °C, not to 260 °C. Is that meant?',
  )
  expect(said({ steps, kitchenIds: ['scale-1'] }).join()).not.toContain('home oven')
})

test('asks where the chosen oven holds fewer pieces than a load', () => {
  const kitchenIds = ['scale-1', 'oven']
  expect(said({ kitchenIds, placesPerLoad: 3 })).toEqual([
    'home oven holds 2 at once, not 3; enter 2 or less, or choose another oven.',
  ])
  expect(said({ kitchenIds, placesPerLoad: 2 })).toEqual([])
})

test('asks where the chosen fridge holds fewer than prove cold at once', () => {
  const steps = [step('mix', 'mix', 600), step('cold', 'cold-proof', 3600), bakeAt(230)]
  const plan = aPlan({ kitchenIds: ['scale-1', 'fridge'], steps })
  // Three doughs, two places.
  expect(planProblems(plan, inKitchen)).toMatchObject([
    { path: '/kitchenIds/1', severity: 'ask', reason: 'fridge-holds-fewer', holds: 2, asked: 3 },
  ])
  expect(planProblems(plan, inKitchen).map(planProblemText)).toEqual([
    '3 doughs or pieces prove cold at once, but small fridge holds 2; choose another fridge too, or make fewer.',
  ])
  const roomy = inKitchen.map((one) => (one.kind === 'fridge' ? { ...one, places: 3 } : one))
  expect(planProblems(plan, roomy)).toEqual([])
})
