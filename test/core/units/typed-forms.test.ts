import { expect, test } from 'vitest'
import { typedDurationSeconds } from '@/core/units/typed-duration.ts'
import { typedNumber } from '@/core/units/typed-number.ts'

// 1 oz = 28.349523125 g (international avoirdupois, exact); a decilitre of water is taken as 100 g.
test.each([
  ['5 kg', 'g', 5000],
  ['½ oz', 'g', 14.1747616],
  ['1 1/2', 'g', 1.5],
  ['1½', '%', 1.5],
  ['2 dl', 'g', 200],
  ['500 g', 'kg', 0.5],
  ["1'250", 'g', 1250],
  ['1.250,5', 'g', 1250.5],
  ['14h', 'h', 14],
  ['14h', 'min', 840],
  ['1h20', 'min', 80],
  ['1 h 30 min', 'h', 1.5],
  ['90 min', 'h', 1.5],
  ['1 1/2 hours', 'min', 90],
  ['2 days', 'h', 48],
  ['45', 'min', 45],
])('%j in a field of %s is %d', (text, unit, value) => {
  expect(typedNumber(text, unit)).toEqual({ ok: true, value })
})

test.each([
  ['5 kg', '%'],
  ['20 min 1 h', 'min'],
  ['1/0', 'g'],
  ['1 5/2', 'g'],
])('%j in a field of %s is refused', (text, unit) => {
  expect(typedNumber(text, unit)).toMatchObject({ ok: false })
})

test('a length of time needs its unit', () => {
  expect(typedDurationSeconds('14')).toBeNull()
  expect(typedDurationSeconds('2 d 3 h')).toBe((2 * 24 + 3) * 3600)
})
