import { expect, test } from 'vitest'
import { wrapped } from '@/cli/wrapped.ts'

test('a number goes to the next line with its unit', () => {
  // "near 74.4" has 9 characters; with " %" it would have 11.
  expect(wrapped('near 74.4 % it', '', 10)).toBe('near\n74.4 % it')
  expect(wrapped('at 24.5 °C', '', 8)).toBe('at\n24.5 °C')
})
