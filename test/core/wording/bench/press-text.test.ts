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

test('a dough that goes into the oven whole says with how many pieces; of several bakes, with which', () => {
  const { events, log } = madeLog()
  const bake = { kind: 'bake-in', stepId: 'bake', repeat: 1 } as const
  log({ ...bake, pieceIds: ['piece-1', 'piece-2'] })
  expect(pressText(events, plan, 'C')).toBe('“C: Into the oven, 2 pieces”')
  log({ ...bake, kind: 'bake-out' })
  expect(pressText(events.slice(1), plan, 'C, flight 2')).toBe('“C, flight 2: Out of the oven”')
  const steps = [...plan.steps, ...plan.steps.filter(({ kind }) => kind === 'bake')]
  expect(pressText(events.slice(1), { ...plan, steps }, 'C')).toBe('“C: bake: out of the oven”')
})

test('without a step the first entry is named, a temperature in the unit of the face', () => {
  const { events, log } = madeLog()
  log({ kind: 'temperature', of: 'room', celsius: 20 })
  expect(pressText(events, plan, '', (celsius) => `${celsius * 1.8 + 32} °F`)).toBe('“Room 68 °F”')
})
