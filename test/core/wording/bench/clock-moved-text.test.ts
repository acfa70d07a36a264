import { expect, test } from 'vitest'
import { clockJumpedText } from '@/core/wording/bench/clock-moved-text.ts'
import { begun, minutes } from '../../../trial-of/made-up-day.ts'

test('a clock that went on may be that of a device that slept: only a step back is surely a clock that was set', () => {
  const on = clockJumpedText(begun, begun + 60 * minutes, 'UTC')
  expect(on.title).toBe('This device’s clock went on by 1 h, or this device slept')
  expect(on.text).toMatch(
    /If the device slept, all times are right\. If the clock was set, .* 1 h too much/,
  )
  const back = clockJumpedText(begun, begun - 60 * minutes, 'UTC')
  expect(back.title).toBe('This device’s clock was moved back by 1 h')
  expect(back.text).toMatch(/What was begun before that shows 1 h too little/)
  expect(back.text).not.toMatch(/slept/)
})
