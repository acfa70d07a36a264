import { expect, test } from 'vitest'
import { freeAxis } from '@/core/figure/value-axis.ts'
import { correlation } from '@/core/statistics/description/correlation.ts'

// a spread call (`Math.max(...column)`) ends in a range error near 120,000 values
const long = Array.from({ length: 300_000 }, (_, i) => i)

test('columns of 300,000 values have a correlation and an axis', () => {
  const answer = correlation(
    long,
    long.map((value) => 7 - 2 * value),
  )
  // a falling straight line: r = -1
  expect(answer.ok && answer.r).toBeCloseTo(-1, 12)
  const { low, high } = freeAxis(long)
  expect(low).toBeLessThanOrEqual(0)
  expect(high).toBeGreaterThanOrEqual(299_999)
})
