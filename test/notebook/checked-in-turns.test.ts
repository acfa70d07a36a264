import 'fake-indexeddb/auto'
import { expect, test } from 'vitest'
import { most } from '@/core/record/most.ts'
import { type WholeTrial, wholeTrialShape } from '@/core/whole-trial/whole-trial.ts'
import { checkedInTurns } from '@/notebook/stored-trial.ts'
import { largeTrial } from '../speed/large-trial.ts'

/** The failure's troubles as they are told, or none. */
const refused = async (read: WholeTrial) =>
  await checkedInTurns(read).then(
    () => null,
    (cause: Error) => cause.message,
  )

test('a long trial checked a part at a time is the one that is checked whole', async () => {
  const whole = largeTrial()
  expect(whole.ballots.length).toBeGreaterThan(1000)
  expect(await checkedInTurns(whole)).toEqual(wholeTrialShape.parse(whole))
})

test('a record that does not fit is told by its place in the whole list', async () => {
  const whole = largeTrial()
  const ballots = whole.ballots.map((ballot, at) =>
    at === 1234 ? { ...ballot, startedAt: 'noon' as unknown as number } : ballot,
  )
  expect(await refused({ ...whole, ballots })).toContain('/ballots/1234/startedAt')
})

test('a log of more entries than a trial takes is refused, though each fits', async () => {
  const whole = largeTrial()
  const [first] = whole.events
  const events = Array.from({ length: most.events + 1 }, () => first as (typeof whole.events)[0])
  expect(await refused({ ...whole, events })).toContain('/events')
})
