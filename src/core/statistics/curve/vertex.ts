import { tHalfWidth } from '@/core/statistics/distributions/students-t.ts'
import { type Answer, refuse } from '@/core/statistics/reason.ts'
import { type FiellerSet, fiellerSet, rescaleSet } from './fieller-set.ts'
import { type PolynomialFit, quadraticForm } from './polynomial-fit.ts'

/** Where a curve turns: the level, whether it is a top, the delta interval and Fieller's set for it. */
export type Vertex = {
  vertex: number
  isTop: boolean
  delta: { se: number; low: number; high: number }
  fieller: FiellerSet
}

/**
 * Where a fitted curve a + b·x + c·x² turns: −b/(2c), with the delta-method interval (plain t) and Fieller's set
 * {x : (b + 2cx)² ≤ t²(v_bb + 4x·v_bc + 4x²·v_cc)}, which is bounded only if c² > t²·v_cc.
 *
 * Refuses `no-curvature` when c is numerically zero (below 1e-10 of the spread of the values over the range of levels).
 *
 * @example vertexOf(curve) // {"ok": true, "vertex": 1.0714, "isTop": true} (the worked hump, by hand: 7.5/7)
 */
export function vertexOf(fit: PolynomialFit, confidence = 0.95): Answer<Vertex> {
  const [, b, c] = fit.coefficients
  if (fit.degree !== 2 || b === undefined || c === undefined) return refuse('no-curvature')
  if (Math.abs(c) <= 1e-10 * fit.spread) return refuse('no-curvature')
  const t = tHalfWidth(confidence, fit.residual.df)
  const at = -b / (2 * c)
  const se = Math.sqrt(quadraticForm([0, -1 / (2 * c), b / (2 * c * c)], fit.covariance))
  const vbb = fit.covariance[1]?.[1] as number
  const vbc = fit.covariance[1]?.[2] as number
  const vcc = fit.covariance[2]?.[2] as number
  const set = fiellerSet(4 * (c * c - t * t * vcc), 4 * (b * c - t * t * vbc), b * b - t * t * vbb)
  const vertex = fit.centre + fit.scale * at
  const half = t * se * fit.scale
  return {
    ok: true,
    vertex,
    isTop: c < 0,
    delta: { se: se * fit.scale, low: vertex - half, high: vertex + half },
    fieller: rescaleSet(set, fit.centre, fit.scale),
  }
}
