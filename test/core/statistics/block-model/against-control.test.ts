import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import { describe, expect, test } from 'vitest'
import { againstControl } from '@/core/statistics/block-model/against-control.ts'
import { fitLevels } from '@/core/statistics/block-model/level-fit.ts'
import { dunnettUpper, dunnettUpperQuantile } from '@/core/statistics/distributions/dunnett.ts'
import { normalLower, normalQuantile } from '@/core/statistics/distributions/normal.ts'
import { nearestProductForm } from '@/core/statistics/distributions/product-correlation.ts'
import { coded } from '../../../outside/coded.ts'
import reference from '../../../outside/reference/dunnett.json'
import { relativeError, worst } from '../../../outside/relative-error.ts'

describe('Dunnett against R', () => {
  const equal = (comparisons: number) => Array.from({ length: comparisons }, () => Math.SQRT1_2)

  test('quantiles and p for equal correlation ½', () => {
    const cases = reference.quantiles_two_sided_equal_correlation
    const quantile = worst(cases, ({ comparisons, df, q95 }) =>
      relativeError(dunnettUpperQuantile(0.05, equal(comparisons), df), q95),
    )
    expect(quantile.error, JSON.stringify(quantile.at)).toBeLessThan(1e-8)
    const p = worst(cases, (one) =>
      relativeError(dunnettUpper(2.5, equal(one.comparisons), one.df), one['p_at_2.5']),
    )
    expect(p.error, JSON.stringify(p.at)).toBeLessThan(1e-8)
  })

  test('the block model example of multcomp, to its own 1e-4', () => {
    const { data, estimates } = reference.example
    const block = coded(data.map(({ taster }) => taster))
    const level = coded(data.map(({ lf }) => lf))
    const fit = fitLevels({
      y: data.map(({ y }) => y),
      block: block.codes,
      level: level.codes,
      blockCount: 6,
      levelCount: 4,
    })
    if (!fit.ok) throw new Error(fit.reason)
    for (const [i, found] of againstControl(fit, 0).entries()) {
      const expected = estimates[i]
      expect(found.difference).toBeCloseTo(expected?.difference as number, 10)
      expect(relativeError(found.se, expected?.se as number)).toBeLessThan(1e-10)
      expect(Math.abs(found.p - (expected?.p as number))).toBeLessThan(1e-4)
      expect(Math.abs(found.low - (expected?.low as number))).toBeLessThan(1e-3)
      expect(Math.abs(found.high - (expected?.high as number))).toBeLessThan(1e-3)
      expect(found.method).toBe('dunnett')
    }
  })
})

test('a single comparison with known spread is the normal on both sides, to its farthest tail', () => {
  const far = Array.from({ length: 72 }, (_, i) => 0.25 + i / 2)
  const found = worst(far, (w) =>
    relativeError(dunnettUpper(w, [0.7], Infinity), 2 * normalLower(-w)),
  )
  expect(found.error, JSON.stringify(found.at)).toBeLessThan(1e-11)
})

test('a t beyond every double has p 0, a t of 0 has p 1', () => {
  for (const df of [1, 5, 40, 1e5]) {
    const p = [30, 60, 1000, 1e6].map((t) => dunnettUpper(t, [0.7, 0.6, 0.8], df))
    for (const [i, one] of p.entries()) {
      expect(one).toBeGreaterThanOrEqual(0)
      expect(one).toBeLessThanOrEqual(p[i - 1] ?? 1)
    }
  }
  expect(dunnettUpper(0, [0.7, 0.6], 9)).toBe(1)
})

test('unequal numbers without blocks are a product form: λ² = n/(n + n of the control)', () => {
  // Corr of (a − c) and (b − c) is √(n_a/(n_a + n_c))·√(n_b/(n_b + n_c)), Dunnett 1955.
  const sizes = [4, 2, 7, 3]
  const level = sizes.flatMap((n, code) => Array.from({ length: n }, () => code))
  const y = level.map((code, i) => code + Math.sin(i))
  const fit = fitLevels({ y, level, block: y.map(() => 0), blockCount: 1, levelCount: 4 })
  if (!fit.ok) throw new Error(fit.reason)
  const lambda = [2, 7, 3].map((n) => Math.sqrt(n / (n + 4)))
  const found = againstControl(fit, 0)
  for (const one of found) {
    expect(one.method).toBe('dunnett')
    expect(one.p).toBeCloseTo(dunnettUpper(one.difference / one.se, lambda, fit.df2), 9)
  }
})

test('correlations that are no products: the simultaneous level holds in a seeded simulation', () => {
  const correlation = [
    [1, 0.7, 0.2, 0.5],
    [0.7, 1, 0.4, 0.35],
    [0.2, 0.4, 1, 0.6],
    [0.5, 0.35, 0.6, 1],
  ]
  const form = nearestProductForm(correlation)
  expect(form.largestGap).toBeGreaterThan(0.05)
  const df = 14
  const t = dunnettUpperQuantile(0.05, form.loadings, df)
  const random = xoroshiro128plus(20261125)
  const normal = () => normalQuantile(uniformFloat64(random) || 0.5)
  const factor = cholesky(correlation)
  const draws = 60_000
  let beyond = 0
  for (let draw = 0; draw < draws; draw += 1) {
    const independent = correlation.map(normal)
    let squares = 0
    for (let i = 0; i < df; i += 1) squares += normal() ** 2
    const s = Math.sqrt(squares / df)
    const largest = Math.max(
      ...factor.map((row) =>
        Math.abs(row.reduce((sum, value, i) => sum + value * (independent[i] as number), 0)),
      ),
    )
    if (largest / s > t) beyond += 1
  }
  // Standard error of the simulated 5 % is 0.09 %; the approximation itself may cost a few tenths.
  expect(Math.abs(beyond / draws - 0.05)).toBeLessThan(0.005)
})

function cholesky(matrix: readonly (readonly number[])[]): number[][] {
  const factor = matrix.map((row) => row.map(() => 0))
  for (const [i, row] of matrix.entries()) {
    for (let j = 0; j <= i; j += 1) {
      let rest = row[j] as number
      for (let k = 0; k < j; k += 1) {
        rest -= (factor[i]?.[k] as number) * (factor[j]?.[k] as number)
      }
      const target = factor[i] as number[]
      target[j] = i === j ? Math.sqrt(rest) : rest / (factor[j]?.[j] as number)
    }
  }
  return factor
}
