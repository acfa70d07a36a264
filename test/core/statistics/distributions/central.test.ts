import { describe, expect, test } from 'vitest'
import { binomialAtLeast, binomialQuantile } from '@/core/statistics/distributions/binomial.ts'
import { chiSquareTails } from '@/core/statistics/distributions/chi-square.ts'
import { fQuantile, fTails } from '@/core/statistics/distributions/f.ts'
import { normalQuantile, normalTails } from '@/core/statistics/distributions/normal.ts'
import { within95 } from '@/core/statistics/distributions/normal-within-95.ts'
import {
  tHalfWidth,
  tQuantile,
  tTails,
  tTwoSidedP,
} from '@/core/statistics/distributions/students-t.ts'
import reference from '../../../outside/reference/distributions.json'
import { relativeError, worst } from '../../../outside/relative-error.ts'

// Reference: R 4.2.2, test/outside/reference/distributions.json, tails included.
const asked = 1e-9

describe('central distributions against R, relative error at most 1e-9', () => {
  test('normal', () => {
    for (const tail of ['lower', 'upper'] as const) {
      const found = worst(reference.normal_cdf, (one) =>
        relativeError(normalTails(one.x)[tail], one[tail]),
      )
      expect(found.error, JSON.stringify(found.at)).toBeLessThan(asked)
    }
    const found = worst(reference.normal_quantile, ({ p, x }) =>
      relativeError(normalQuantile(p), x),
    )
    expect(found.error, JSON.stringify(found.at)).toBeLessThan(asked)
  })

  test('t', () => {
    for (const tail of ['lower', 'upper'] as const) {
      const found = worst(reference.t_cdf, (one) =>
        relativeError(tTails(one.x, one.df)[tail], one[tail]),
      )
      expect(found.error, JSON.stringify(found.at)).toBeLessThan(asked)
    }
    const found = worst(reference.t_quantile, ({ p, df, x }) => relativeError(tQuantile(p, df), x))
    expect(found.error, JSON.stringify(found.at)).toBeLessThan(asked)
  })

  test('F', () => {
    for (const tail of ['lower', 'upper'] as const) {
      const found = worst(reference.F_cdf, (one) =>
        relativeError(fTails(one.x, one.df1, one.df2)[tail], one[tail]),
      )
      expect(found.error, JSON.stringify(found.at)).toBeLessThan(asked)
    }
  })

  test('F quantile, but for the two points where R itself is off', () => {
    const sound = reference.F_quantile.filter((one) => !isOffInR(one))
    expect(reference.F_quantile.length - sound.length).toBe(2)
    const found = worst(sound, ({ p, df1, df2, x }) => relativeError(fQuantile(p, df1, df2), x))
    expect(found.error, JSON.stringify(found.at)).toBeLessThan(asked)
  })

  test('F quantile at p = 0.001 and one numerator df is the square of a t', () => {
    // F(1, n) = t(n)², so its p-quantile is the square of the t with (1 + p)/2 below it; the middle of t is found from its
    // density, near 0: P(|T| < x) = 2·c·(x − (n+1)/(6n)·x³ + (n+1)(n+3)/(40n²)·x⁵ − …), c = Γ((n+1)/2)/(√(nπ)·Γ(n/2)).
    // With n even the density at 0 is a product of whole numbers; for 120 it is 0.39811199…: see the recurrence below.
    for (const n of [33, 120]) {
      const root = Math.sqrt(fQuantile(0.001, 1, n))
      const series =
        root - ((n + 1) / (6 * n)) * root ** 3 + (((n + 1) * (n + 3)) / (40 * n * n)) * root ** 5
      expect(relativeError(2 * densityAtZero(n) * series, 0.001)).toBeLessThan(1e-13)
    }
  })

  test('F quantile where the package answers NaN or 0', () => {
    for (const p of [1e-8, 1e-5, 0.5, 1 - 1e-8]) {
      for (const [df1, df2] of [
        [1, 1],
        [1, 120],
        [24, 2],
        [24, 120],
      ] as const) {
        const tails = fTails(fQuantile(p, df1, df2), df1, df2)
        const error = p < 0.5 ? relativeError(tails.lower, p) : relativeError(tails.upper, 1 - p)
        expect(error).toBeLessThan(1e-12)
      }
    }
  })

  test('chi-square', () => {
    for (const tail of ['lower', 'upper'] as const) {
      const found = worst(reference.chi2_cdf, (one) =>
        relativeError(chiSquareTails(one.x, one.df)[tail], one[tail]),
      )
      expect(found.error, JSON.stringify(found.at)).toBeLessThan(asked)
    }
  })

  test('binomial', () => {
    // The reference prints 1/3 as 0.333333333333333, which is not the p it was made with.
    const chance = (p: number) => (p < 0.34 && p > 0.3 ? 1 / 3 : p)
    // At most k successes is at least n − k failures.
    const lower = worst(reference.binomial, (one) =>
      relativeError(binomialAtLeast(one.n - one.k, one.n, 1 - chance(one.p)), one.lower),
    )
    expect(lower.error, JSON.stringify(lower.at)).toBeLessThan(asked)
    const upper = worst(reference.binomial, (one) =>
      relativeError(binomialAtLeast(one.k, one.n, chance(one.p)), one.upper_inclusive),
    )
    expect(upper.error, JSON.stringify(upper.at)).toBeLessThan(asked)
  })
})

describe('edges', () => {
  test('ends of the quantiles', () => {
    expect(normalQuantile(0)).toBe(-Infinity)
    expect(normalQuantile(0.975)).toBeCloseTo(within95, 14)
    expect(normalQuantile(1)).toBe(Infinity)
    expect(normalQuantile(0.5)).toBe(0)
    expect(tQuantile(0.5, 7)).toBe(0)
    expect(fQuantile(0, 3, 4)).toBe(0)
    expect(fQuantile(1, 3, 4)).toBe(Infinity)
    expect(fTails(Infinity, 2, 3)).toEqual({ lower: 1, upper: 0 })
    expect(fTails(0, 2, 3)).toEqual({ lower: 0, upper: 1 })
    expect(chiSquareTails(0, 3)).toEqual({ lower: 0, upper: 1 })
    expect(binomialAtLeast(6, 5, 0.5)).toBe(0)
    expect(binomialQuantile(0.5, 4, 0.5)).toBe(2) // 1 + 4 + 6 of 16 are at most 2, 5 of 16 at most 1
  })

  test('the two-sided t with one degree of freedom is the Cauchy', () => {
    // P(|T| ≥ 1) = 1 − (2/π)·atan 1 = 1/2; the quartile is 1.
    expect(tTwoSidedP(-1, 1)).toBeCloseTo(0.5, 14)
    expect(tHalfWidth(0.5, 1)).toBeCloseTo(1, 14)
  })
})

function isOffInR({ p, df1, df2 }: { p: number; df1: number; df2: number }): boolean {
  return p === 0.001 && df1 === 1 && (df2 === 33 || df2 === 120)
}

/** Density of t at 0: 1/π at n = 1, 1/√8 at n = 2, and c(n + 2) = c(n)·(n + 1)/√(n·(n + 2)). */
function densityAtZero(n: number): number {
  let at = n % 2 === 1 ? 1 : 2
  let density = at === 1 ? 1 / Math.PI : 1 / Math.sqrt(8)
  for (; at < n; at += 2) density *= (at + 1) / Math.sqrt(at * (at + 2))
  return density
}
