import { expect, test } from 'vitest'
import type { Level } from '@/core/trial/level.ts'
import { planProblems } from '@/core/trial/plan-problems.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { aPlan, factorOf, kitchen, levelsOf, plainFormula, step } from './a-plan.ts'

const seen = (change: Partial<Plan>, things = kitchen) =>
  planProblems(aPlan(change), things).map(
    ({ severity, path, reason }) => `${severity} ${path} ${reason}`,
  )

test('a sound plan has none', () => {
  expect(planProblems(aPlan(), kitchen)).toEqual([])
})

const label = (levels: Level[], index: number, change: Partial<Level>) =>
  levels.map((level, at) => (at === index ? { ...level, ...change } : level))
const three = levelsOf([62, 68, 74], 68)
const response = aPlan().responses
const nothingFirst = { hopedLevelId: null, mostSessions: null, looks: false, againstUsual: false }

test.each<[string, Partial<Plan>, string]>([
  ['question', { question: ' ' }, 'stop /question empty-question'],
  ['no expectation', { expectation: null }, 'ask /expectation no-expectation'],
  [
    'guess outside',
    { expectation: { direction: 'rises', bestGuess: 90 } },
    'ask /expectation/bestGuess best-guess-outside',
  ],
  [
    'the level hoped for is gone',
    { writtenFirst: { ...nothingFirst, hopedLevelId: 'gone' } },
    'stop /writtenFirst/hopedLevelId hoped-level-gone',
  ],
  [
    'fewer at most than planned',
    { plannedSessions: 3, writtenFirst: { ...nothingFirst, mostSessions: 2 } },
    'stop /writtenFirst/mostSessions most-below-planned',
  ],
  [
    'looks without end',
    { plannedSessions: 9, writtenFirst: { ...nothingFirst, looks: true } },
    'ask /writtenFirst/looks looks-too-many',
  ],
  [
    'compared with no usual',
    { levels: levelsOf([62, 68]), writtenFirst: { ...nothingFirst, againstUsual: true } },
    'stop /writtenFirst/againstUsual no-usual-level',
  ],
  ['one level', { levels: levelsOf([68], 68) }, 'stop /levels fewer-than-two-levels'],
  ['no control', { levels: levelsOf([62, 68]) }, 'ask /levels no-control'],
  [
    'two controls',
    { levels: label(three, 2, { control: true }) },
    'stop /levels/2/control two-controls',
  ],
  [
    'same label',
    { levels: label(three, 2, { label: ' 62' }) },
    'stop /levels/2/label duplicate-label',
  ],
  ['no label', { levels: label(three, 0, { label: '' }) }, 'stop /levels/0/label empty-label'],
  [
    'same value',
    { levels: label(three, 2, { value: 62 }) },
    'stop /levels/2/value duplicate-value',
  ],
  [
    'no value',
    { levels: label(three, 0, { value: null }) },
    'stop /levels/0/value level-without-value',
  ],
  ['NaN', { levels: label(three, 0, { value: Number.NaN }) }, 'stop /levels/0/value not-a-number'],
  [
    '1e308',
    { levels: label(three, 0, { value: 1e308 }) },
    'stop /levels/0/value level-out-of-range',
  ],
  [
    'below 0',
    { levels: label(three, 0, { value: -1 }) },
    'stop /levels/0/value level-out-of-range',
  ],
  ['dry', { levels: label(three, 0, { value: 25 }) }, 'ask /levels/0/value hydration-unusual'],
  [
    'half a fold',
    {
      factor: factorOf({ on: 'fold-count', stepId: 'mix' }),
      levels: levelsOf([1, 2.5], 1),
    },
    'stop /levels/1/value level-not-whole',
  ],
  [
    'names no ingredient',
    { factor: factorOf({ on: 'hydration', ingredientId: 'gone' }) },
    'stop /factor/acts/ingredientId factor-names-nothing',
  ],
  [
    'names no step',
    { factor: factorOf({ on: 'proof-time', stepId: 'gone' }) },
    'stop /factor/acts/stepId factor-names-nothing',
  ],
  [
    'names no preferment',
    { factor: factorOf({ on: 'preferment-share', prefermentId: 'gone' }) },
    'stop /factor/acts/prefermentId factor-names-nothing',
  ],
  [
    'water that is salt',
    { factor: factorOf({ on: 'hydration', ingredientId: 'salt' }) },
    'stop /factor/acts/ingredientId factor-names-wrong-kind',
  ],
  [
    'flour from itself',
    { factor: factorOf({ on: 'flour-share', ingredientId: 'flour', fromIngredientId: 'flour' }) },
    'stop /factor/acts/fromIngredientId flour-from-itself',
  ],
  ['one dough', { doughs: 'one' }, 'stop /doughs one-dough-cannot-serve'],
  ['no responses', { responses: [] }, 'stop /responses no-responses'],
  ['no main', { mainResponseId: null }, 'stop /mainResponseId no-main-response'],
  ['main gone', { mainResponseId: 'gone' }, 'stop /mainResponseId main-response-missing'],
  [
    'no margin',
    { responses: response.map((one) => ({ ...one, margin: null })) },
    'ask /responses/0/margin no-margin',
  ],
  [
    'margin 0',
    { responses: response.map((one) => ({ ...one, margin: 0 })) },
    'stop /responses/0/margin margin-not-above-zero',
  ],
  [
    'margin 8 of 8',
    { responses: response.map((one) => ({ ...one, margin: 8 })) },
    'stop /responses/0/margin margin-past-scale',
  ],
  [
    'response twice',
    { responses: response.flatMap((one) => [one, { ...one, id: 'other' }]) },
    'stop /responses/1/name duplicate-response',
  ],
  [
    'scale without ends',
    { responses: response.map((one) => ({ ...one, scale: { kind: 'nine-point', anchors: [] } })) },
    'ask /responses/0/scale/anchors anchor-missing',
  ],
  ['no steps', { steps: [] }, 'stop /steps no-steps'],
  ['no bake', { steps: [step('mix', 'mix', 5)] }, 'ask /steps no-bake-step'],
  [
    'empty step',
    { steps: [{ ...step('mix', 'mix', 0), handsSeconds: 0 }] },
    'ask /steps/0/handsSeconds step-takes-no-time',
  ],
  [
    'tolerance',
    { steps: [{ ...step('mix', 'mix', 60), earlySeconds: 61 }] },
    'ask /steps/0/earlySeconds tolerance-past-wait',
  ],
  [
    'rise of how much',
    { steps: [{ ...step('mix', 'mix', 60), endsBy: { by: 'mark', mark: 'rise' } }] },
    'ask /steps/0/endsBy mark-without-words',
  ],
  [
    'cools 2 h, served as baked',
    {
      serving: 'as-baked',
      steps: [step('mix', 'mix', 60), step('bake', 'bake', 60), step('cool', 'cool', 7200)],
    },
    'ask /steps/2/waitSeconds cools-as-baked',
  ],
  [
    'pieces heavier than a dough of its flour',
    {
      factor: { ...factorOf({ on: 'piece-mass' }, 'piece'), splitsAt: 'divide' },
      levels: levelsOf([810, 860, 910], 860),
      formula: { ...plainFormula, batchSize: { by: 'flour', flourGrams: 300 } },
    },
    'stop /formula/batchSize/flourGrams pieces-outweigh-dough',
  ],
  ['no tasters', { tasters: [] }, 'stop /tasters no-tasters'],
  ['one taster', { tasters: [{ tasterId: 'a', knows: false }] }, 'ask /tasters one-taster'],
  [
    'taster twice',
    { tasters: [0, 1].map(() => ({ tasterId: 'a', knows: false })) },
    'stop /tasters/1/tasterId taster-twice',
  ],
  ['thing gone', { kitchenIds: ['scale-1', 'gone'] }, 'ask /kitchenIds/1 kitchen-thing-missing'],
  [
    'wanted in Fahrenheit',
    { temperature: { wantedDoughCelsius: 76, flourCelsius: 20, roomCelsius: 20, matched: true } },
    'ask /temperature/wantedDoughCelsius temperature-unusual',
  ],
  [
    'tell apart itself',
    { tellApart: { test: 'triangle', levelIds: ['L62', 'L62'] } },
    'stop /tellApart/levelIds/1 tell-apart-same-level',
  ],
  [
    'a pair asked for more of nothing',
    { tellApart: { test: 'paired', levelIds: ['L62', 'L66'] } },
    'stop /tellApart/attribute pair-of-nothing',
  ],
  [
    'tell apart a stranger',
    { tellApart: { test: 'triangle', levelIds: ['L62', 'gone'] } },
    'stop /tellApart/levelIds/1 tell-apart-level-missing',
  ],
  [
    'dose of nothing',
    { sharedDoses: [{ ingredientId: 'gone', by: 'stock' }] },
    'stop /sharedDoses/0/ingredientId shared-dose-names-nothing',
  ],
  [
    'formula inside',
    { formula: { ...plainFormula, batchSize: { by: 'flour', flourGrams: 0 } } },
    'stop /formula/batchSize/flourGrams no-dough',
  ],
])('%s', (_, change, expected) => {
  expect(seen(change)).toContain(expected)
})

test('a plan that names no scale has all of the kitchen; without one it is asked for', () => {
  const plan = aPlan({ kitchenIds: [] })
  const reasons = (things: Parameters<typeof planProblems>[1]) =>
    planProblems(plan, things).map(({ reason }) => reason)
  expect(reasons(kitchen)).not.toContain('no-scale')
  expect(reasons([])).toContain('no-scale')
})
