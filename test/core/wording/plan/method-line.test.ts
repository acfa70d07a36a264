import { expect, test } from 'vitest'
import { startingPlan } from '@/core/plan-edits/start/starting-plan.ts'
import { methodLine, methodSumText } from '@/core/wording/plan/method-line.ts'

const { steps } = startingPlan({ newId: () => 'id', at: 0, zone: 'UTC' })

test('each step begins when those before it are over, repeats counted', () => {
  // mix 10 + 30 min, two folds of 1 + 30, shape 3, proof 60, bake 1 + 35, cool 120, cut 2
  expect(methodLine(steps).map(({ begins }) => begins)).toEqual([
    ...['0:00', '0:40', '1:42', '1:45', '2:45', '3:21', '5:21'],
  ])
  expect(methodSumText(steps)).toBe('7 steps, 5 h 23 min from mix to cut')
  expect(methodSumText([])).toBe('no step yet')
})

test('a step done once for all doughs says so', () => {
  const [mix, ...rest] = steps
  if (!mix) throw new Error('the method begins with the mix')
  expect(methodLine([{ ...mix, once: true }, ...rest])[0]?.times).toBe(
    `${methodLine(steps)[0]?.times}, once for all doughs`,
  )
})
