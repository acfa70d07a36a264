import { fQuantile, fTails } from '@/core/statistics/distributions/f.ts'

/** How often an F test over tasters calls pieces different although the factor does nothing, and the share of the levels' spread that is the bake's. */
export type BakeBaseRate = { rate: number; share: number }

/**
 * Tasters × levels, pieces made by `bakes` bakes in all of `sessions`: with λ = 1 + J(σ_b²/S + σ_p²/F)/(σ_tl² + σ_r²/F), the F over tasters exceeds its
 * 5 % point in P(F > F₉₅/λ), and 1 − 1/λ of the spread between levels is of doughs and pieces. Variances, all σ².
 * Worked out by simulation and quadrature for this project, checked against R.
 *
 * @example bakeBaseRate({ levels: 5, tasters: 6, sessions: 1, pieces: 1, batchVariance: 0.16, pieceVariance: 0.36, tasterLevelVariance: 0.36, residualVariance: 1.44 }) // {"rate": 0.41, "share": 0.63} (by simulation for this project)
 */
export function bakeBaseRate(input: {
  levels: number
  tasters: number
  sessions: number
  /** Pieces of a level over all sessions. */
  pieces: number
  batchVariance: number
  pieceVariance: number
  tasterLevelVariance: number
  residualVariance: number
}): BakeBaseRate {
  const { levels, tasters, sessions, pieces } = input
  const ofBakes = input.batchVariance / sessions + input.pieceVariance / pieces
  const ofTasters = input.tasterLevelVariance + input.residualVariance / pieces
  const ratio = 1 + (tasters * ofBakes) / ofTasters
  const [df1, df2] = [levels - 1, (tasters - 1) * (levels - 1)]
  return {
    rate: fTails(fQuantile(0.95, df1, df2) / ratio, df1, df2).upper,
    share: 1 - 1 / ratio,
  }
}
