import { expect, test } from 'vitest'
import { roomOfDay } from '@/core/clock-plan/room-of-day.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { withThingChosen } from '@/core/plan-edits/day/choose-thing.ts'
import { hasOvenTimes, withOvenTimes } from '@/core/plan-edits/day/oven-times-of-plan.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { planOfTest } from '../plan-of-test.ts'

const kitchen: KitchenThing[] = [
  { id: 'four', kind: 'oven', name: 'home oven', places: 4 },
  { id: 'two', kind: 'oven', name: 'small oven', places: 2 },
  { id: 'tap', kind: 'tap', name: 'tap', coldestCelsius: 8, warmestCelsius: 45 },
]
const turned = (plan: Plan, ...ids: string[]) =>
  ids.reduce((now, id) => withThingChosen(now, kitchen, id), plan)

test('an oven brings the number of its pieces along, and takes it away again', () => {
  const plan = planOfTest()
  expect(turned(plan, 'four')).toMatchObject({ kitchenIds: ['four'], placesPerLoad: 4 })
  expect(turned(plan, 'four', 'tap', 'two').placesPerLoad).toBe(6)
  expect(turned(plan, 'four', 'two', 'four')).toMatchObject({
    ...{ kitchenIds: ['two'], placesPerLoad: 2 },
  })
  expect(turned(plan, 'four', 'four')).toEqual(plan)
})

test('a number of one’s own stays', () => {
  const own = { ...planOfTest(), placesPerLoad: 3 }
  expect(turned(own, 'four').placesPerLoad).toBe(3)
  expect(turned({ ...turned(planOfTest(), 'four'), placesPerLoad: 3 }, 'two').placesPerLoad).toBe(3)
})

test('another thing leaves the number alone', () => {
  expect(turned(planOfTest(), 'tap')).toMatchObject({ kitchenIds: ['tap'], placesPerLoad: 1 })
})

const hot: KitchenThing = {
  ...{ id: 'hot', kind: 'oven', name: 'deck', places: 2 },
  ...{ recoverySeconds: 150, heatSecondsPerKelvin: 9 },
}
const slow: KitchenThing = { ...hot, id: 'slow', recoverySeconds: 300, coolSecondsPerKelvin: 40 }
const withTimes = [...kitchen, hot, slow]
const timed = (plan: Plan, ...ids: string[]) =>
  ids.reduce((now, id) => withThingChosen(now, withTimes, id), plan)

test('an oven brings its own times along, of several the slowest, and takes them away again', () => {
  const plan = planOfTest()
  expect(timed(plan, 'hot').day).toEqual({
    recoverySeconds: 150,
    // Of cooling the kitchen says nothing: 20 s for each degree, the stated default.
    oven: { heatSecondsPerKelvin: 9, coolSecondsPerKelvin: 20 },
  })
  expect(timed(plan, 'hot', 'slow', 'tap').day).toEqual({
    recoverySeconds: 300,
    oven: { heatSecondsPerKelvin: 9, coolSecondsPerKelvin: 40 },
  })
  expect(timed(plan, 'hot', 'slow', 'hot', 'slow')).toEqual(plan)
  expect(timed(plan, 'four').day).toBeUndefined()
})

test('what the kitchen learned since is taken by one act, and the planned day waits for it between two loads', () => {
  const chosen = timed({ ...planOfTest(), day: { mixers: 2 } }, 'hot')
  const learned = withTimes.map((thing) =>
    thing.id === 'hot' && thing.kind === 'oven' ? { ...thing, recoverySeconds: 240 } : thing,
  )
  expect(hasOvenTimes(chosen, learned, chosen.kitchenIds)).toBe(false)
  const taken = withOvenTimes(chosen, learned)
  expect(hasOvenTimes(taken, learned, taken.kitchenIds)).toBe(true)
  expect([roomOfDay(chosen).recoverySeconds, roomOfDay(taken).recoverySeconds]).toEqual([150, 240])
  expect(taken.day).toMatchObject({ mixers: 2 })
})
