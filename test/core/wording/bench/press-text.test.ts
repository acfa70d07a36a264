import { expect, test } from 'vitest'
import { pressText } from '@/core/wording/bench/press-text.ts'
import { madePlan } from '../../made-plan.ts'
import { madeLog } from '../../session/made-events.ts'

const plan = madePlan()

test('a press that ends a step and begins the next is named by both', () => {
  const { events, log } = madeLog()
  log({ kind: 'step-stopped', stepId: 'mix', repeat: 1 })
  log({ kind: 'step-started', stepId: 'fold', repeat: 1 })
  expect(pressText(events, plan, 'A')).toBe('“A: mix done” and “fold 1 of 2 begun”')
})

test('the way into the oven that comes with a bake, and what else one press corrects, is not named again', () => {
  const { events, log } = madeLog()
  log({ kind: 'step-started', stepId: 'bake', repeat: 1 })
  log({ kind: 'bake-in' })
  expect(pressText(events, plan, 'C, flight 2')).toBe('“C, flight 2: bake begun”')
})

test('without a step the first entry is named, a temperature in the unit of the face', () => {
  const { events, log } = madeLog()
  log({ kind: 'temperature', of: 'room', celsius: 20 })
  expect(pressText(events, plan, '', (celsius) => `${celsius * 1.8 + 32} °F`)).toBe('“Room 68 °F”')
})
