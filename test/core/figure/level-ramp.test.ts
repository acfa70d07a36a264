import { converter, wcagContrast } from 'culori'
import { expect, test } from 'vitest'
import { choicePaint, rampPaint } from '@/core/figure/level-ramp.ts'

const oklch = converter('oklch')

test.each(['light', 'dark'] as const)(
  'the %s ramp steps evenly in lightness and always darkens',
  (appearance) => {
    for (let count = 2; count <= 12; count += 1) {
      const lightness = Array.from(
        { length: count },
        (_, index) => oklch(rampPaint(index, count, appearance).fill)?.l ?? 0,
      )
      const steps = lightness.slice(1).map((value, index) => (lightness[index] ?? 0) - value)
      expect(Math.min(...steps)).toBeGreaterThan(0)
      // stops are 0.095 to 0.12 (light) and 0.07 to 0.075 (dark) apart: no step is more than half as long again as another
      expect(Math.max(...steps) / Math.min(...steps)).toBeLessThan(1.5)
    }
  },
)

test.each(['light', 'dark'] as const)(
  'text on every tab of the %s ramp has a contrast of at least 4.5 (WCAG 2.2, 1.4.3)',
  (appearance) => {
    for (let count = 1; count <= 12; count += 1) {
      for (let index = 0; index < count; index += 1) {
        const { fill, text } = rampPaint(index, count, appearance)
        expect(wcagContrast(fill, text), `${index} of ${count}`).toBeGreaterThanOrEqual(4.5)
      }
    }
  },
)

test('options of a choice share one fill and differ by pattern', () => {
  const paints = [0, 1, 2, 3].map((index) => choicePaint(index, 'light'))
  expect(new Set(paints.map((paint) => paint.fill)).size).toBe(1)
  expect(new Set(paints.map((paint) => paint.pattern)).size).toBe(4)
})
