import { describe, expect, test } from 'vitest'
import { normalLower } from '@/core/statistics/distributions/normal.ts'
import {
  studentizedRangeTails,
  studentizedRangeUpperQuantile,
} from '@/core/statistics/distributions/studentized-range.ts'
import { tHalfWidth, tTwoSidedP } from '@/core/statistics/distributions/students-t.ts'
import reference from '../../../outside/reference/distributions.json'
import settled from '../../../outside/reference/settled.json'
import { relativeError, worst } from '../../../outside/relative-error.ts'

const upper = (one: { q: number; means: number; df: number }) =>
  studentizedRangeTails(one.q, one.means, one.df).upper

/**
 * Where R's ptukey itself is off by more than 1e-6 (found with mpmath, see the reference's README): q from 7 up with
 * tails below 0.01 for more than two means. There mpmath's own values stand in `settled`.
 */
const settledByMpmath = new Map(
  settled.studentized_range_cdf.map((one) => [`${one.q} ${one.means} ${one.df}`, one.upper]),
)

describe('studentized range, relative error at most 1e-6', () => {
  test('upper tail against R from 5 df up, mpmath where it settles R', () => {
    const cases = reference.studentized_range_cdf.filter(({ df }) => df >= 5)
    const withR = cases.filter(
      ({ q, means, df, upper: p }) =>
        !settledByMpmath.has(`${q} ${means} ${df}`) && p > 1e-12 && means > 2,
    )
    expect(withR.length).toBeGreaterThan(300)
    const found = worst(withR, (one) => relativeError(upper(one), one.upper))
    expect(found.error, JSON.stringify(found.at)).toBeLessThan(1e-6)
  })

  test('upper tail against mpmath, down to 1e-40', () => {
    const found = worst(settled.studentized_range_cdf, (one) =>
      relativeError(upper(one), one.upper),
    )
    expect(found.error, JSON.stringify(found.at)).toBeLessThan(1e-8)
  })

  test('two means are √2·|t|, at every df of the grid, 2 included', () => {
    const cases = reference.studentized_range_cdf.filter(({ means }) => means === 2)
    const found = worst(cases, (one) =>
      relativeError(upper(one), tTwoSidedP(one.q / Math.SQRT2, one.df)),
    )
    expect(found.error, JSON.stringify(found.at)).toBeLessThan(1e-9)
    expect(studentizedRangeUpperQuantile(0.05, 2, 2)).toBeCloseTo(
      Math.SQRT2 * tHalfWidth(0.95, 2),
      12,
    )
  })

  test('lower tail against the vouched high-precision values, 3 df included', () => {
    // Below 1e-20 (q = 0.1, 20 means) the listed values are not relative: 20·∫φ²⁰·0.1¹⁹ alone is 1.2e-26 at infinite df.
    const vouched = reference.studentized_range_high_precision.filter(({ lower }) => lower > 1e-20)
    expect(vouched.length).toBe(reference.studentized_range_high_precision.length - 6)
    const found = worst(vouched, ({ q, means, df, lower }) =>
      relativeError(studentizedRangeTails(q, means, df).lower, lower),
    )
    expect(found.error, JSON.stringify(found.at)).toBeLessThan(1e-6)
  })

  test('quantiles against R’s refined ones from 9 df up, mpmath elsewhere', () => {
    const settledQuantile = new Map(
      settled.studentized_range_quantile.map((one) => [`${one.p} ${one.means} ${one.df}`, one.q]),
    )
    const cases = reference.studentized_range_quantile.filter(
      ({ p, means, df }) => df >= 5 && !settledQuantile.has(`${p} ${means} ${df}`),
    )
    expect(cases.length).toBeGreaterThan(190)
    const found = worst(cases, ({ p, means, df, q_refined }) =>
      relativeError(studentizedRangeUpperQuantile(1 - p, means, df), q_refined),
    )
    expect(found.error, JSON.stringify(found.at)).toBeLessThan(1e-6)
    const other = worst(settled.studentized_range_quantile, ({ p, means, df, q }) =>
      relativeError(studentizedRangeUpperQuantile(1 - p, means, df), q),
    )
    expect(other.error, JSON.stringify(other.at)).toBeLessThan(1e-8)
  })

  test('tails fall without a break, to nothing', () => {
    for (const df of [1, 2, 5, 40, 1e5]) {
      for (const k of [2, 3, 8, 12]) {
        let before = 1
        for (let q = 0.01; q < 1e7; q *= 1.7) {
          const { lower, upper: tail } = studentizedRangeTails(q, k, df)
          expect(tail).toBeLessThanOrEqual(before * (1 + 1e-10))
          expect(tail).toBeGreaterThanOrEqual(0)
          expect(lower + tail).toBeCloseTo(1, 9)
          before = tail
        }
      }
    }
  })

  test('two means with known spread are the normal on both sides, to its farthest tail', () => {
    const far = Array.from({ length: 98 }, (_, i) => 0.25 + i / 2)
    const found = worst(far, (q) =>
      relativeError(studentizedRangeTails(q, 2, Infinity).upper, 2 * normalLower(-q / Math.SQRT2)),
    )
    expect(found.error, JSON.stringify(found.at)).toBeLessThan(1e-11)
  })

  test('ends', () => {
    expect(studentizedRangeTails(0, 4, 10)).toEqual({ lower: 0, upper: 1 })
    expect(studentizedRangeTails(1000, 4, 1e4).upper).toBe(0)
    expect(studentizedRangeTails(3, 3, Number.POSITIVE_INFINITY).upper).toBeGreaterThan(0)
  })
})
