import { describe, expect, test } from 'vitest'
import { noncentralTTails } from '@/core/statistics/distributions/noncentral-t.ts'
import { studentizedRangeUpperQuantile } from '@/core/statistics/distributions/studentized-range.ts'
import { tHalfWidth } from '@/core/statistics/distributions/students-t.ts'
import { fTestPower, powerBeyond } from '@/core/statistics/power/test-power.ts'
import { slopeHalfWidth, tukeyPower, tukeyWouldShow } from '@/core/statistics/power/would-show.ts'
import reference from '../../../outside/reference/power.json'

describe('power against R', () => {
  test('randomised blocks', () => {
    for (const { df1, df2, ncp, power } of reference.randomized_block) {
      expect(fTestPower(df1, df2, ncp)).toBeCloseTo(power, 8)
    }
  })

  test('one-way: the listed size has the listed power', () => {
    for (const { k, f, alpha, power, n_per_group: n } of reference.oneway) {
      // R's search for n stops at 1e-4 of n.
      expect(fTestPower(k - 1, k * (n - 1), k * n * f * f, alpha)).toBeCloseTo(power, 5)
    }
    // R documentation: 4 groups, between variance 1, within 3: 11.92613 each; ncp = 3·n·1/3.
    expect(fTestPower(3, 4 * (11.92613 - 1), 11.92613)).toBeCloseTo(0.8, 5)
  })

  test('t tests: pairs and two samples, one tail or both', () => {
    for (const {
      d,
      alpha,
      power,
      pairs,
      pairs_strict,
      per_group_two_sample: each,
    } of reference.t_tests) {
      const critical = (df: number) => tHalfWidth(1 - alpha, df)
      // R's power.t.test counts the tail of the true direction alone, unless strict.
      const oneTail = (df: number, size: number) => noncentralTTails(critical(df), df, size).upper
      expect(oneTail(pairs - 1, Math.sqrt(pairs) * d)).toBeCloseTo(power, 5)
      expect(oneTail(2 * each - 2, Math.sqrt(each / 2) * d)).toBeCloseTo(power, 5)
      const df = pairs_strict - 1
      expect(powerBeyond(critical(df), df, Math.sqrt(pairs_strict) * d)).toBeCloseTo(power, 5)
    }
  })
})

describe('what a design would show', () => {
  test('the half-width is Tukey’s, and the difference found has the power asked for', () => {
    const found = tukeyWouldShow(0.3, 5, 12)
    const se = Math.sqrt(0.6)
    expect(found.halfWidth).toBeCloseTo(
      (studentizedRangeUpperQuantile(0.05, 5, 12) / Math.SQRT2) * se,
      12,
    )
    expect(tukeyPower(found.wouldShow, 0.3, 5, 12)).toBeCloseTo(0.8, 8)
  })

  test('two levels are a paired t test: R’s strict number of pairs', () => {
    // power.json: with d = 0.5 and power 0.8 it takes 33.3671 pairs (strict); variance of a difference 1 = 2·(n/2)/n.
    const row = reference.t_tests.find(
      ({ d, alpha, power }) => d === 0.5 && alpha === 0.05 && power === 0.8,
    )
    const pairs = row?.pairs_strict as number
    expect(tukeyWouldShow(0.5 / pairs, 2, pairs - 1).wouldShow).toBeCloseTo(0.5, 5)
  })

  test('slope over the whole range, by hand', () => {
    // Levels 60, 65, 70: Σ(L − 65)² = 50; half-width t·√(0.5/50)·10 = t·1.
    expect(slopeHalfWidth(0.5, [60, 65, 70], 8)).toBeCloseTo(tHalfWidth(0.95, 8), 12)
  })
})
