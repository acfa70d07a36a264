import { normalDensity, normalLower } from './normal.ts'

const step = 0.25
/** How far from its middle a normal still counts. */
const reach = 8.5
/** The integrand is largest near loading·w: this many points hold it for every w up to 37. */
const count = 182
const z = Float64Array.from({ length: count }, (_, i) => i * step)
const density = z.map((at) => (at === 0 ? 1 : 2) * normalDensity(at))

/**
 * Chance that at least one of several correlated standard normals is further than w from zero on either side, where the
 * correlation of the i-th and j-th is loadings[i]·loadings[j].
 *
 * Given the shared part z the normals are independent, so that the chance is ∫φ(z)[1 − Π(1 − tail_i(z))]dz with
 * tail_i = Φ((−w − λ_i z)/√(1−λ_i²)) + Φ((−w + λ_i z)/√(1−λ_i²)) (Dunnett & Sobel 1955, Biometrika 42:258; from memory).
 * The integrand is even in z, so half the axis is summed (trapezoid rule, exponentially exact).
 * 1 − Π is formed from logarithms and keeps its relative precision. A loading of 1 in size is a programmer's mistake and throws.
 */
export function largestOfNormalsUpper(w: number, loadings: readonly number[]): number {
  const groups = groupEqual(loadings)
  const sizes = groups.map(({ loading }) => loading)
  const start = Math.max(0, Math.floor((Math.min(...sizes) * w - reach) / step))
  const end = Math.min(count, Math.ceil((Math.max(...sizes) * w + reach) / step))
  let total = 0
  for (let i = start; i < end; i += 1) {
    const at = z[i] as number
    let logInside = 0
    for (const { loading, spread, times } of groups) {
      const shift = loading * at
      let tail = normalLower((shift - w) / spread)
      // The far side is exp(−2·shift·w/spread²) of the near one: left out where a double would not show it.
      if (shift * w < 20 * spread * spread) tail += normalLower(-(shift + w) / spread)
      logInside += times * Math.log1p(-Math.min(tail, 1))
    }
    total -= (density[i] as number) * Math.expm1(logInside)
  }
  return step * total
}

function groupEqual(loadings: readonly number[]) {
  const times = new Map<number, number>()
  for (const loading of loadings) {
    if (!(Math.abs(loading) < 1))
      throw new RangeError(`a loading must be inside ±1, not ${loading}`)
    times.set(Math.abs(loading), (times.get(Math.abs(loading)) ?? 0) + 1)
  }
  return [...times].map(([loading, n]) => ({
    loading,
    spread: Math.sqrt(1 - loading * loading),
    times: n,
  }))
}
