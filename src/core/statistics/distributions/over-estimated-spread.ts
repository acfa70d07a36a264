import { negligible, scaleStep, scaleWeight } from './chi-mixture.ts'

/**
 * The upper tail of a statistic over an estimated spread, from its tail over the known one: P(W > q·s) averaged over
 * s = √(χ²/df) as `averageOverScale` does it, for any q ≥ 0 and df.
 *
 * The nodes are laid so that w = q·s falls on the powers of one step. All q, and all df with that step, then ask for the same
 * values of the known tail, and each is worked out once. Steps are the rule's, rounded down to 0.15·2^(−i/2).
 * `curvature` is the κ in a tail like exp(−κ·w²).
 */
export function overEstimatedSpread(
  knownUpper: (w: number) => number,
  curvature: number,
): (q: number, df: number) => number {
  const lattices = new Map<number, Map<number, number>>()
  return (q, df) => {
    if (df === Infinity || q === Infinity) return knownUpper(q)
    const step = roundedDown(scaleStep(df))
    const lattice = lattices.get(step) ?? new Map<number, number>()
    lattices.set(step, lattice)
    const weightAt = scaleWeight(df)
    const logQ = Math.log(q)
    const peak = logQ - 0.5 * Math.log(1 + (2 * curvature * q * q) / df)
    const from = Math.round(peak / step)
    let total = 0
    for (const direction of [1, -1]) {
      let sum = 0
      let before = 0
      for (let m = direction === 1 ? from : from - 1; ; m += direction) {
        let upper = lattice.get(m)
        if (upper === undefined) {
          upper = knownUpper(Math.exp(m * step))
          lattice.set(m, upper)
        }
        const term = upper * weightAt(m * step - logQ)
        sum += term
        if (!(term > negligible * sum || term > before)) break
        before = term
      }
      total += sum
    }
    return Math.min(1, step * total)
  }
}

function roundedDown(step: number): number {
  return 0.15 * 2 ** (-Math.ceil(2 * Math.log2(0.15 / step) - 1e-9) / 2)
}
