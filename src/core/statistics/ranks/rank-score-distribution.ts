const kept = new Map<string, Float64Array>()

/**
 * Chances of Σ i·r_i over all ways to deal one block's ranks to its positions, ranks doubled so that ties stay whole numbers:
 * entry s is the chance that the doubled sum is s. Counted by subsets of ranks used up (2^k of them), not by permutations.
 */
export function rankScoreDistribution(doubledRanks: readonly number[]): Float64Array {
  const ordered = [...doubledRanks].sort((a, b) => a - b)
  const key = ordered.join(' ')
  const known = kept.get(key)
  if (known) return known
  const k = ordered.length
  const highest = ordered.reduce((sum, rank, i) => sum + rank * (i + 1), 0)
  const bySubset: (Float64Array | undefined)[] = [Float64Array.of(1)]
  /** Between which sums the counts of a subset lie. */
  const lowest: number[] = [0]
  const farthest: number[] = [0]
  const total = new Float64Array(highest + 1)
  for (let subset = 0; subset < 2 ** k; subset += 1) {
    const counts = bySubset[subset]
    if (!counts) continue
    const position = bitCount(subset) + 1
    if (position > k) {
      total.set(counts)
      continue
    }
    for (const [bit, rank] of ordered.entries()) {
      if (subset & (1 << bit)) continue
      const next = subset | (1 << bit)
      const target = bySubset[next] ?? new Float64Array(highest + 1)
      bySubset[next] = target
      const shift = rank * position
      const [low, high] = [lowest[subset] as number, farthest[subset] as number]
      lowest[next] = Math.min(lowest[next] ?? highest, low + shift)
      farthest[next] = Math.max(farthest[next] ?? 0, high + shift)
      for (let s = low; s <= high; s += 1) {
        const count = counts[s] as number
        if (count > 0)
          target[s + shift] = (target[s + shift] as number) + count / (k - position + 1)
      }
    }
    bySubset[subset] = undefined
  }
  if (kept.size > 300) kept.clear()
  kept.set(key, total)
  return total
}

function bitCount(bits: number): number {
  let count = 0
  for (let left = bits; left > 0; left &= left - 1) count += 1
  return count
}
