import { expect, it } from 'vitest'
import { type Hands, whoseHands } from '@/core/clock-plan/whose-hands.ts'
import { madePlan, madeStep } from '../made-plan.ts'

const hour = 3_600_000
const originAt = 1_800_000_000_000
/** One pair of hands, and a helper from the first to the second hour of the day. */
const plan = madePlan({
  pairsOfHands: 1,
  steps: [madeStep('shape', 'ball', { samePerson: true }), madeStep('chill', 'cold-proof')],
  day: { helpers: [{ fromAt: originAt + hour, untilAt: originAt + 2 * hour }] },
})

/** A row by its minutes. */
const row = (id: string, begin: number, end: number, stepId = 'chill') => ({
  ...{ id, stepId, beginSeconds: begin * 60, endSeconds: end * 60 },
})
const own: Hands = { whose: 'own', number: 1 }
const helper: Hands = { whose: 'helper', number: 1 }

it('gives the helper what would need a second pair of hands in their hour, and the baker all else', () => {
  const rows = [
    row('before', 50, 60),
    row('shaped', 62, 74, 'shape'),
    row('into the fridge', 70, 71),
    row('moment', 72, 72),
    row('after', 130, 135),
  ]
  expect([...whoseHands(rows, plan, originAt)]).toEqual([
    ['before', own],
    ['shaped', own],
    ['into the fridge', helper],
    ['after', own],
  ])
})

it('has the helper begin where the baker’s next work goes on past the helper’s hour', () => {
  // From 1:50 to 2:10 only the baker can: at 1:45 the helper takes what they are there for.
  const rows = [row('short', 105, 115), row('long', 110, 130)]
  expect([...whoseHands(rows, plan, originAt)]).toEqual([
    ['short', helper],
    ['long', own],
  ])
})

it('names nobody for work that two would have to share, and for a step of one person no helper', () => {
  // One began before the helper came, the other ends after they left: neither is the helper's.
  expect([...whoseHands([row('one', 50, 90), row('other', 80, 130)], plan, originAt)]).toEqual([
    ['one', own],
  ])
  const shaped = [row('one', 62, 74, 'shape'), row('other', 70, 82, 'shape')]
  expect([...whoseHands(shaped, plan, originAt)]).toEqual([['one', own]])
})

it('says nothing where nobody helps by the hour or no moment is fixed', () => {
  const rows = [row('one', 0, 10)]
  expect(whoseHands(rows, madePlan({ pairsOfHands: 2 }), originAt).size).toBe(0)
  expect(whoseHands(rows, plan, null).size).toBe(0)
})
