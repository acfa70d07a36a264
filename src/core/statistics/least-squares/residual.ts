import { type Refusal, refuse } from '@/core/statistics/reason.ts'

/** What a fit left over: sum of squares, degrees of freedom, standard deviation. */
export type Residual = { sumOfSquares: number; df: number; sd: number }

/**
 * The residual of a fit, or why nothing can be tested against it: no degrees of freedom, all values the same, or a model that
 * fits every row (a residual below 1e-14 of the largest value is rounding).
 */
export function residualOf(
  sumOfSquares: number,
  df: number,
  lowest: number,
  highest: number,
): { ok: true; residual: Residual } | Refusal {
  if (lowest === highest) return refuse('all-equal')
  if (df <= 0) return refuse('no-residual-df')
  const sd = Math.sqrt(sumOfSquares / df)
  const largest = Math.max(Math.abs(lowest), Math.abs(highest))
  if (sd <= 1e-14 * largest) return refuse('no-residual-variance')
  return { ok: true, residual: { sumOfSquares, df, sd } }
}
