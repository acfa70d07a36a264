import { expect, test } from 'vitest'
import { typedNumber } from '@/core/units/typed-number.ts'

test('decimal point and decimal comma mean the same', () => {
  expect(typedNumber('66.5')).toEqual({ ok: true, value: 66.5 })
  expect(typedNumber('66,5')).toEqual({ ok: true, value: 66.5 })
})

test('nothing typed is no number yet, not a zero', () => {
  expect(typedNumber('  ')).toEqual({ ok: true, value: null })
})

test('a comma before three digits is refused rather than guessed, unless it can only be a decimal', () => {
  expect(typedNumber('1,250')).toEqual({ ok: false, reason: 'thousands-or-decimals' })
  expect(typedNumber('0,125')).toEqual({ ok: true, value: 0.125 })
  expect(typedNumber('1.250')).toEqual({ ok: true, value: 1.25 })
})

test('the unit of the field may be typed along', () => {
  expect(typedNumber('500 g', 'g')).toEqual({ ok: true, value: 500 })
  expect(typedNumber('70 %', '% of flour')).toEqual({ ok: true, value: 70 })
})

test('words are refused', () => {
  expect(typedNumber('a pinch')).toMatchObject({ ok: false })
})
