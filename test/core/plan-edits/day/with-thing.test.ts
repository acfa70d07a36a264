import { expect, test } from 'vitest'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { withThingChosen } from '@/core/plan-edits/day/choose-thing.ts'
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
