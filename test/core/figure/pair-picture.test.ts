import { expect, test } from 'vitest'
import { pairPicture } from '@/core/figure/pair-picture.ts'
import { freeAxis } from '@/core/figure/value-axis.ts'

const pair = (a: string, b: string, difference: number, low: number, high: number) => ({
  a,
  b,
  difference,
  low,
  high,
})

test('a pair beyond the margin matters, one without zero differs, the rest is open', () => {
  const { rows } = pairPicture(
    [pair('A', 'B', 2, 1.2, 2.8), pair('A', 'C', -1, -1.5, -0.5), pair('B', 'C', 0.2, -0.4, 0.8)],
    1,
  )
  expect(rows.map(({ a, b, shows }) => [a, b, shows])).toEqual([
    ['B', 'C', 'open'],
    ['A', 'C', 'differs'],
    ['A', 'B', 'matters'],
  ])
})

test('without a margin nothing is said to matter', () => {
  expect(pairPicture([pair('A', 'B', 9, 8, 10)], null).rows[0]?.shows).toBe('differs')
})

test('the axis holds zero, both margins and every interval', () => {
  const { axis } = pairPicture([pair('A', 'B', 2, 1.2, 2.8)], 1)
  expect(axis.low).toBeLessThanOrEqual(-1)
  expect(axis.high).toBeGreaterThanOrEqual(2.8)
})

test('a free axis has room and round ticks for one value and for none', () => {
  for (const values of [[], [0], [7.3], [-2, -2], [1e-5, 2e-5], [1000, 5000]]) {
    const axis = freeAxis(values)
    expect(axis.ticks.length).toBeGreaterThan(2)
    for (const value of values) {
      expect(value).toBeGreaterThan(axis.low)
      expect(value).toBeLessThan(axis.high)
    }
  }
})
