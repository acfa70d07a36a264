import erfcx from '@stdlib/math-base-special-erfcx'
import stdlibQuantile from '@stdlib/stats-base-dists-normal-quantile'
import type { Tails } from './tails.ts'

const rootHalf = Math.SQRT1_2
const inverseRootTwoPi = 1 / Math.sqrt(2 * Math.PI)

/**
 * Share of a standard normal at or below x: erfc(−x/√2)/2, which keeps its relative precision far out (2·10⁻¹³ at −37).
 * By the scaled function erfcx(y) = exp(y²)·erfc(y), which leaves the exponential to the machine: a third of the time.
 *
 * @example normalLower(1.95996) // 0.97500 (tables)
 */
export function normalLower(x: number): number {
  return x > 0
    ? 1 - 0.5 * erfcx(x * rootHalf) * Math.exp(-0.5 * x * x)
    : 0.5 * erfcx(-x * rootHalf) * Math.exp(-0.5 * x * x)
}

/** Density of the standard normal at x. */
export function normalDensity(x: number): number {
  return inverseRootTwoPi * Math.exp(-0.5 * x * x)
}

/** Both tails of a standard normal. */
export function normalTails(x: number): Tails {
  return { lower: normalLower(x), upper: normalLower(-x) }
}

/**
 * The standard normal value with a share p below it; −∞ at 0, ∞ at 1, NaN outside.
 * One Newton step mends the package's quantile, which is 4e-7 off at p = 1e-12.
 *
 * @example normalQuantile(0.975) // 1.95996 (tables)
 */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) return p === 0 ? -Infinity : p === 1 ? Infinity : Number.NaN
  if (p === 0.5) return 0
  const tail = Math.min(p, 1 - p)
  const x = stdlibQuantile(tail, 0, 1)
  const mended = x - (normalLower(x) - tail) / normalDensity(x)
  return p < 0.5 ? mended : -mended
}
