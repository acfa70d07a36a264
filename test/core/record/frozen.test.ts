import { expect, test } from 'vitest'
import { frozen } from '@/core/record/frozen.ts'

test('a frozen record refuses a change at any depth, and is the record that was given', () => {
  const record = { id: 'a', levels: [{ value: 68 }], note: null }
  const closed = frozen(record)
  expect(closed).toBe(record)
  expect(() => closed.levels.push({ value: 70 })).toThrow(TypeError)
  expect(() => {
    const [level] = closed.levels
    if (level) level.value = 70
  }).toThrow(TypeError)
  expect(closed).toEqual({ id: 'a', levels: [{ value: 68 }], note: null })
})

test('what has no parts is given back as it is', () => {
  expect([frozen(3), frozen(null), frozen(undefined), frozen('a')]).toEqual([
    3,
    null,
    undefined,
    'a',
  ])
})
