import { expect, test } from 'vitest'
import type { Standing } from '@/core/session/effective-events.ts'
import { toWeigh } from '@/core/session/press/to-weigh.ts'
import { weighPress } from '@/core/session/press/weigh-press.ts'
import { levelFromWeights } from '@/core/weighing/level-from-weights.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { planOf } from '../../../trial-of/plan-of.ts'
import { wholeTrialOf } from '../../../whole-trial-of.ts'

const { kitchen } = wholeTrialOf()
const plan = planOf()
const sheet = weighSheet(plan, kitchen)

let count = 0
const weighed = (ingredientId: string, grams: number, prefermentId?: string): Standing => ({
  ...{ id: `weighed-${++count}`, trialId: 'trial-1', sessionId: 'session-1', zone: 'UTC' },
  ...{ device: 'phone', count, at: 1000 * count, kind: 'weighed', ingredientId, grams },
  about: { kind: 'batch', id: 'batch-1' },
  ...(prefermentId === undefined ? {} : { prefermentId }),
})
const lineOf = (key: string, events: Standing[] = []) => {
  const line = toWeigh(sheet, 'level-1', 'batch-1', events).find((each) => each.key === key)
  if (!line) throw new Error(`no line ${key}`)
  return line
}

test('parts of a preferment are logged into it; the preferment itself goes in whole and is not logged', () => {
  expect(lineOf('poolish/water').loggedAs).toEqual({
    ingredientId: 'water',
    prefermentId: 'poolish',
  })
  expect(lineOf('poolish/water').name).toBe('Water, for the Poolish')
  expect(lineOf('final/poolish').loggedAs).toBeNull()
})

test('a dose of a stock is weighed under the ingredient it brings, and says what it is', () => {
  // The plan doses its yeast at 15 g of a stock of 5 g yeast in 95 g water.
  const dose = lineOf('final/yeast')
  expect(dose.name).toBe('Yeast, stock')
  expect(dose.loggedAs).toEqual({ ingredientId: 'yeast', prefermentId: null })
  expect(dose.grams).toBe(15)
})

test('water of the dough and water of the preferment are kept apart; several goes add up', () => {
  const events = [weighed('water', 60, 'poolish'), weighed('water', 100), weighed('water', 25)]
  expect(lineOf('final/water', events).logged?.grams).toBe(125)
  expect(lineOf('poolish/water', events).logged?.grams).toBe(60)
})

test('weighed again, the reading stands for the whole: the last go is corrected, earlier ones are taken back', () => {
  const events = [weighed('water', 100), weighed('water', 25)]
  const [one, other] = events
  const press = weighPress(lineOf('final/water', events), 'batch-1', 130)
  expect(press).toEqual([
    { kind: 'void', about: { kind: 'batch', id: 'batch-1' }, corrects: one?.id },
    {
      kind: 'weighed',
      about: { kind: 'batch', id: 'batch-1' },
      ingredientId: 'water',
      grams: 130,
      corrects: other?.id,
    },
  ])
  expect(weighPress(lineOf('final/poolish'), 'batch-1', 130)).toEqual([])
})

test('the planned reading is what the scale can show', () => {
  for (const line of toWeigh(sheet, 'level-1', 'batch-1', []))
    expect(line.text).toBe(`${line.text.replace(/ g$/, '')} g`)
  expect(Number(lineOf('final/flour').text.replace(' g', ''))).toBe(lineOf('final/flour').grams)
})

test('a ripe starter, logged by its preferment, moves the level by its water and flour', () => {
  // 1000 g flour in all, of which a starter of equal parts brings 100 g with 100 g water; hydration 70 %: 600 g more.
  const level = { id: 'level-1', value: 70, label: '70', control: true }
  const bread = weighSheet(
    {
      ...plan,
      sharedDoses: [],
      kitchenIds: [],
      levels: [level],
      formula: {
        ingredients: [
          { id: 'flour', name: 'Flour', kind: 'flour', percent: 100 },
          { id: 'water', name: 'Water', kind: 'water', percent: 70 },
        ],
        preferments: [
          {
            ...{ id: 'starter', name: 'Starter', kind: 'starter', flourSharePercent: 10 },
            parts: [
              { ingredientId: 'flour', percent: 100 },
              { ingredientId: 'water', percent: 100 },
            ],
          },
        ],
        batchSize: { by: 'flour', flourGrams: 1000 },
      },
    },
    [],
  )
  const batch = bread.batches[0]
  if (!batch) throw new Error('the sheet has a batch')
  const [starter] = toWeigh(bread, 'level-1', 'batch-1', [])
  expect(starter?.loggedAs).toEqual({ ingredientId: 'starter', prefermentId: null })
  const logged = [{ ingredientId: 'starter', prefermentId: null, grams: 240 }]
  const none = { dustingFlourGrams: 0, handWaterGrams: 0, oilGrams: 0 }
  const worked = levelFromWeights(batch, plan.factor.acts, logged, none)
  // 240 g of it bring 120 g water and 120 g flour: (600 + 120) / (900 + 120) = 70.588 %.
  expect(worked.ok && worked.weighed.value).toBeCloseTo(70.588, 3)
  expect(worked.ok && worked.loggedLines).toBe(1)
})
