import { normalDensity, normalLower } from './normal.ts'

const step = 0.25
/** How far from its middle a normal still counts. */
const reach = 8.5

/**
 * Chance that at least one of several correlated standard normals exceeds w, where the correlation of the i-th and j-th is
 * loadings[i]·loadings[j]: one-sided, the upper side alone.
 *
 * Given the shared part z the normals are independent: ∫φ(z)[1 − Π(1 − Φ((λ_i z − w)/√(1−λ_i²)))]dz (Dunnett & Sobel 1955,
 * Biometrika 42:258; from memory), by the trapezoid rule over the whole axis; 1 − Π is formed from logarithms. A loading of
 * 1 in size is a programmer's mistake and throws.
 */
export function highestOfNormalsUpper(w: number, loadings: readonly number[]): number {
  const parts = loadings.map((loading) => {
    if (!(Math.abs(loading) < 1))
      throw new RangeError(`a loading must be inside ±1, not ${loading}`)
    return { loading, spread: Math.sqrt(1 - loading * loading) }
  })
  // The integrand peaks near z = loading·w as well as at 0.
  const end = reach + Math.max(0, ...loadings.map((loading) => loading * w))
  const start = -reach + Math.min(0, ...loadings.map((loading) => loading * w))
  let total = 0
  for (let z = Math.floor(start / step) * step; z <= end; z += step) {
    let logBelow = 0
    for (const { loading, spread } of parts)
      logBelow += Math.log1p(-Math.min(1, normalLower((loading * z - w) / spread)))
    total -= normalDensity(z) * Math.expm1(logBelow)
  }
  return step * total
}
