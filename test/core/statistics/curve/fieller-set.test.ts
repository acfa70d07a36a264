import { describe, expect, test } from 'vitest'
import { gatherCells } from '@/core/statistics/block-model/cells.ts'
import { crossingOf } from '@/core/statistics/curve/crossing.ts'
import { fiellerSet } from '@/core/statistics/curve/fieller-set.ts'
import { fitPolynomial, type PolynomialFit } from '@/core/statistics/curve/polynomial-fit.ts'
import { tHalfWidth } from '@/core/statistics/distributions/students-t.ts'
import tests from '../../../outside/reference/tests.json'
import { relativeError } from '../../../outside/relative-error.ts'

describe('shapes of a Fieller set', () => {
  test('an interval, everything outside one, everything', () => {
    expect(fiellerSet(1, -5, 6)).toEqual({ kind: 'interval', low: 2, high: 3 }) // (x − 2)(x − 3) ≤ 0
    expect(fiellerSet(-1, 5, -6)).toEqual({ kind: 'outside', low: 2, high: 3 })
    expect(fiellerSet(-1, 0, -1)).toEqual({ kind: 'everything', low: null, high: null })
  })

  test('at the boundary a half-line', () => {
    expect(fiellerSet(0, 2, -6)).toEqual({ kind: 'outside', low: 3, high: null }) // 2x ≤ 6
    expect(fiellerSet(0, -2, 6)).toEqual({ kind: 'outside', low: null, high: 3 })
    expect(fiellerSet(0, 0, -1)).toEqual({ kind: 'everything', low: null, high: null })
  })

  test('roots of very different size keep their digits', () => {
    // (x − 1e-8)(x − 1e8): naive formulas lose the small root.
    const set = fiellerSet(1, -(1e8 + 1e-8), 1)
    expect(relativeError(set.low as number, 1e-8)).toBeLessThan(1e-14)
  })

  test('the ratio of two means: PlantGrowth, R', () => {
    // (b − ρ·a)² ≤ t²·s²·(1/n + ρ²/n), n = 10 each: means 5.032 and 5.526 of ctrl and trt2.
    const { ratio, pooled_variance, df, fieller } = tests.fieller_ratio_plantgrowth
    const [a, b] = [5.032, 5.526]
    expect(relativeError(b / a, ratio)).toBeLessThan(1e-12)
    const spread = (tHalfWidth(0.95, df) ** 2 * pooled_variance) / 10
    const set = fiellerSet(a * a - spread, -2 * a * b, b * b - spread)
    expect(relativeError(set.low as number, fieller[0] as number)).toBeLessThan(1e-10)
    expect(relativeError(set.high as number, fieller[1] as number)).toBeLessThan(1e-10)
  })
})

function fitted(x: readonly number[], y: readonly number[], degree: 1 | 2): PolynomialFit {
  const values = [...new Set(x)].sort((a, b) => a - b)
  const cells = gatherCells({
    y,
    level: x.map((value) => values.indexOf(value)),
    block: x.map(() => 0),
    blockCount: 1,
    levelCount: values.length,
  })
  const found = fitPolynomial(cells, values, degree)
  if (!found.ok) throw new Error(found.reason)
  return found
}

describe('crossing a target', () => {
  test('a line: the calibration set of the stopping distances, solved by hand', () => {
    // x̄ = 15.4, Sxx = 1370 (R's cars); solve (ȳ + b(x − x̄) − 60)² = t²σ²(1/50 + (x − x̄)²/Sxx).
    const { x, y, coefficients, sigma } = tests.linear_cars
    const found = crossingOf(fitted(x, y, 1), 60)
    if (!found.ok) throw new Error(found.reason)
    const [intercept, slope] = coefficients as [number, number]
    expect(found.at).toHaveLength(1)
    expect(relativeError(found.at[0] as number, (60 - intercept) / slope)).toBeLessThan(1e-10)
    const t2 = (tHalfWidth(0.95, 48) * sigma) ** 2
    const height = intercept + slope * 15.4 - 60
    const a = slope ** 2 - t2 / 1370
    const b = 2 * slope * height
    const c = height ** 2 - t2 / 50
    const root = Math.sqrt(b * b - 4 * a * c)
    const ends = found.stretches[0]
    expect(found.stretches).toHaveLength(1)
    expect(relativeError(ends?.low as number, 15.4 + (-b - root) / (2 * a))).toBeLessThan(1e-9)
    expect(relativeError(ends?.high as number, 15.4 + (-b + root) / (2 * a))).toBeLessThan(1e-9)
  })

  test('a curve crosses twice, each with its stretch; a target above its top is never crossed', () => {
    const x = [1, 2, 3, 4, 5, 1, 2, 3, 4, 5]
    const y = x.map((value, i) => 9 - (value - 3) ** 2 + (i < 5 ? 0.05 : -0.05))
    const curve = fitted(x, y, 2)
    const found = crossingOf(curve, 8)
    if (!found.ok) throw new Error(found.reason)
    expect(found.at).toEqual([expect.closeTo(2, 8), expect.closeTo(4, 8)])
    expect(found.stretches).toHaveLength(2)
    for (const [i, { low, high }] of found.stretches.entries()) {
      expect(low).toBeLessThan(found.at[i] as number)
      expect(high).toBeGreaterThan(found.at[i] as number)
    }
    const above = crossingOf(curve, 12)
    expect(above).toEqual({ ok: true, at: [], stretches: [] })
  })

  test('a weak slope leaves the outside of an interval, or every level', () => {
    const x = [1, 2, 3, 1, 2, 3]
    const weak = crossingOf(fitted(x, [4, 6, 5.2, 6, 4, 5], 1), 5)
    if (!weak.ok) throw new Error(weak.reason)
    expect(weak.stretches).toEqual([{ low: null, high: null }])
  })

  test('no slope at all has a reason', () => {
    const level = fitted([1, 2, 3, 1, 2, 3], [4, 5, 6, 6, 5, 4], 1)
    expect(crossingOf(level, 5)).toEqual({ ok: false, reason: 'no-slope' })
  })
})
