import { describe, expect, test } from 'vitest'
import { fTails } from '@/core/statistics/distributions/f.ts'
import { noncentralFTails } from '@/core/statistics/distributions/noncentral-f.ts'
import { noncentralTTails } from '@/core/statistics/distributions/noncentral-t.ts'
import { normalLower } from '@/core/statistics/distributions/normal.ts'
import reference from '../../../outside/reference/distributions.json'
import settled from '../../../outside/reference/settled.json'
import { relativeError, worst } from '../../../outside/relative-error.ts'

// Settled: mpmath at 30 digits at every point of the R grid. R itself carries absolute errors up to 1e-9 there.
describe('noncentral t and F', () => {
  test('t against mpmath, both tails, relative error at most 1e-9', () => {
    for (const tail of ['lower', 'upper'] as const) {
      const found = worst(settled.noncentral_t_cdf, (one) =>
        relativeError(noncentralTTails(one.x, one.df, one.ncp)[tail], one[tail]),
      )
      expect(found.error, JSON.stringify(found.at)).toBeLessThan(1e-9)
    }
  })

  test('t against R, to R’s own absolute error', () => {
    for (const one of reference.noncentral_t_cdf) {
      const found = noncentralTTails(one.x, one.df, one.ncp)
      expect(Math.abs(found.lower - one.lower)).toBeLessThan(2e-9)
      expect(Math.abs(found.upper - one.upper)).toBeLessThan(2e-9)
    }
  })

  test('F against mpmath, both tails, relative error at most 1e-9', () => {
    for (const tail of ['lower', 'upper'] as const) {
      const found = worst(settled.noncentral_F_cdf, (one) =>
        relativeError(noncentralFTails(one.x, one.df1, one.df2, one.ncp)[tail], one[tail]),
      )
      expect(found.error, JSON.stringify(found.at)).toBeLessThan(1e-9)
    }
  })

  test('F against R, to R’s own absolute error', () => {
    for (const one of reference.noncentral_F_cdf) {
      const found = noncentralFTails(one.x, one.df1, one.df2, one.ncp)
      expect(Math.abs(found.lower - one.lower)).toBeLessThan(2e-9)
      expect(Math.abs(found.upper - one.upper)).toBeLessThan(2e-9)
    }
  })

  test('F with one numerator df is the square of t', () => {
    for (const [t, df, shift] of [
      [1.3, 4, 0.7],
      [2.8, 17, 2.5],
      [0.4, 60, 5],
    ] as const) {
      const both = noncentralTTails(t, df, shift).lower - noncentralTTails(-t, df, shift).lower
      expect(noncentralFTails(t * t, 1, df, shift * shift).lower).toBeCloseTo(both, 11)
    }
  })

  test('no shift is the central distribution; no spread is the normal', () => {
    expect(noncentralFTails(2.5, 3, 20, 0)).toEqual(fTails(2.5, 3, 20))
    expect(noncentralTTails(1, Number.POSITIVE_INFINITY, 3).lower).toBe(normalLower(-2))
    expect(noncentralFTails(0, 3, 20, 4)).toEqual({ lower: 0, upper: 1 })
  })
})
