import { tHalfWidth } from '@/core/statistics/distributions/students-t.ts'
import { type Answer, refuse } from '@/core/statistics/reason.ts'
import { polynomialAt, realRoots } from '@/core/statistics/roots/polynomial-roots.ts'
import type { PolynomialFit } from './polynomial-fit.ts'

/** A stretch of levels; null where it has no end. */
export type Stretch = { low: number | null; high: number | null }

/**
 * Where a line or curve crosses a target: the levels themselves (`at`, none when the curve stays clear of it), and the
 * stretches of levels at which the fitted height cannot be told from the target.
 */
export type Crossing = { at: number[]; stretches: Stretch[] }

/**
 * At which level does the response reach a target (just about right, for instance)? Crossings of the fitted polynomial, with
 * Fieller's set {x : (height(x) − target)² ≤ t²·variance of height(x)}: for a line an interval, everything outside one, or
 * everything; for a curve up to three stretches. The set may be empty when a curve stays clear of the target.
 *
 * Refuses `no-slope` when the fit is level to rounding.
 *
 * @example crossingOf(line, 4).at // [1] (the worked table lies on 2 + 2L)
 */
export function crossingOf(
  fit: PolynomialFit,
  target: number,
  confidence = 0.95,
): Answer<Crossing> {
  const [a = 0, ...bends] = fit.coefficients
  if (bends.every((bend) => Math.abs(bend) <= 1e-10 * fit.spread)) return refuse('no-slope')
  const height = [a - target, ...bends]
  const t = tHalfWidth(confidence, fit.residual.df)
  const gap = multiply(height, height)
  for (const [i, row] of fit.covariance.entries()) {
    for (const [j, value] of row.entries()) gap[i + j] = (gap[i + j] as number) - t * t * value
  }
  const toLevel = (x: number) => fit.centre + fit.scale * x
  return {
    ok: true,
    at: realRoots(height).map(toLevel),
    stretches: stretchesBelowZero(gap).map(({ low, high }) => ({
      low: low === null ? null : toLevel(low),
      high: high === null ? null : toLevel(high),
    })),
  }
}

function multiply(p: readonly number[], q: readonly number[]): number[] {
  const product = new Array<number>(p.length + q.length - 1).fill(0)
  for (const [i, a] of p.entries()) {
    for (const [j, b] of q.entries()) product[i + j] = (product[i + j] as number) + a * b
  }
  return product
}

function stretchesBelowZero(coefficients: readonly number[]): Stretch[] {
  const roots = realRoots(coefficients)
  const edges = [-Infinity, ...roots, Infinity]
  const found: Stretch[] = []
  for (let i = 0; i + 1 < edges.length; i += 1) {
    const [low, high] = [edges[i] as number, edges[i + 1] as number]
    if (polynomialAt(coefficients, insideOf(low, high)) > 0) continue
    const before = found.at(-1)
    if (before && before.high === low) before.high = endOf(high)
    else found.push({ low: endOf(low), high: endOf(high) })
  }
  return found
}

function insideOf(low: number, high: number): number {
  if (low === -Infinity) return high === Infinity ? 0 : high - 1 - Math.abs(high)
  return high === Infinity ? low + 1 + Math.abs(low) : low + (high - low) / 2
}

function endOf(edge: number): number | null {
  return Number.isFinite(edge) ? edge : null
}
