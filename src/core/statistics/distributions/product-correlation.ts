/** Loadings λ whose products come nearest to given correlations, and the largest gap that is left. */
export type ProductForm = { loadings: number[]; largestGap: number }

/**
 * Correlations of several comparisons brought to the form λ_i·λ_j, the only one in which Dunnett's integral stays
 * one-dimensional: exact for unblocked levels of any size and for balanced blocks, else the nearest by least squares
 * over all pairs (Hsu 1992, J Comput Graph Stat 1:151, on factor analytic approximation; from memory).
 *
 * Each λ is solved in turn with the others held until nothing moves (least squares, coordinate by coordinate),
 * kept inside ±0.999999. A single comparison has loading 0; two are met exactly.
 */
export function nearestProductForm(correlation: readonly (readonly number[])[]): ProductForm {
  const n = correlation.length
  if (n < 2) return { loadings: Array.from({ length: n }, () => 0), largestGap: 0 }
  const at = (i: number, j: number) => correlation[i]?.[j] as number
  const loadings = Array.from({ length: n }, (_, i) => startOf(correlation, i))
  if (n === 2) {
    const size = Math.sqrt(Math.abs(at(0, 1)))
    return { loadings: [Math.sign(at(0, 1)) * size, size], largestGap: 0 }
  }
  for (let round = 0; round < 500; round += 1) {
    let moved = 0
    for (let i = 0; i < n; i += 1) {
      let [above, below] = [0, 0]
      for (let j = 0; j < n; j += 1) {
        if (j === i) continue
        above += at(i, j) * (loadings[j] as number)
        below += (loadings[j] as number) ** 2
      }
      const next = below > 0 ? Math.max(-0.999999, Math.min(0.999999, above / below)) : 0
      moved = Math.max(moved, Math.abs(next - (loadings[i] as number)))
      loadings[i] = next
    }
    if (moved < 1e-15) break
  }
  let largestGap = 0
  for (let i = 0; i < n; i += 1) {
    for (let j = 0; j < i; j += 1) {
      const product = (loadings[i] as number) * (loadings[j] as number)
      largestGap = Math.max(largestGap, Math.abs(at(i, j) - product))
    }
  }
  return { loadings, largestGap }
}

function startOf(correlation: readonly (readonly number[])[], i: number): number {
  const others = (correlation[i] ?? []).filter((_, j) => j !== i)
  const mean = others.reduce((sum, value) => sum + value, 0) / others.length
  return Math.sqrt(Math.max(mean, 0.01))
}
