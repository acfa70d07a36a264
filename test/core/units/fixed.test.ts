import fc from 'fast-check'
import { expect, test } from 'vitest'
import { toFixedDecimals } from '@/core/units/fixed.ts'
import { roundToStep, stepDecimals } from '@/core/units/round-to-step.ts'

test('prints the digits a person sees', () => {
  expect(toFixedDecimals(66.4, 1)).toBe('66.4')
  expect(toFixedDecimals(1.005, 2)).toBe('1.01')
  expect(toFixedDecimals(-0.04, 1)).toBe('0.0')
  expect(toFixedDecimals(-2.5, 0)).toBe('-3')
  expect(toFixedDecimals(1e-9, 3)).toBe('0.000')
  expect(() => toFixedDecimals(Number.NaN, 1)).toThrow()
})

test('a scale step has its decimals', () => {
  expect([1, 0.1, 0.05, 0.01, 5, 1e-7].map(stepDecimals)).toEqual([0, 1, 2, 2, 0, 7])
  expect(() => stepDecimals(0)).toThrow()
})

test('rounds to the step without dust, halves away from zero', () => {
  expect(roundToStep(66.44, 0.1)).toBe(66.4)
  expect(roundToStep(0.15, 0.1)).toBe(0.2)
  expect(roundToStep(1.125, 0.05)).toBe(1.15)
  expect(roundToStep(1234.5, 1)).toBe(1235)
  expect(roundToStep(12.4, 5)).toBe(10)
  expect(roundToStep(0.29 * 3, 0.01)).toBe(0.87)
})

test('a rounded value is within half a step, and rounding it again changes nothing', () => {
  const steps = fc.constantFrom(0.01, 0.05, 0.1, 0.5, 1, 2, 5)
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1e5, noNaN: true }), steps, (value, step) => {
      const rounded = roundToStep(value, step)
      expect(Math.abs(rounded - value)).toBeLessThanOrEqual(step / 2 + 1e-9)
      expect(roundToStep(rounded, step)).toBe(rounded)
      expect(String(rounded).length).toBeLessThanOrEqual(9)
    }),
  )
})
