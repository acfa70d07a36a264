import type { LevelFit } from '@/core/statistics/block-model/level-fit.ts'
import { fTails } from '@/core/statistics/distributions/f.ts'
import { type Answer, refuse } from '@/core/statistics/reason.ts'
import type { PolynomialFit } from './polynomial-fit.ts'

export type LackOfFit = { f: number; df1: number; df2: number; p: number }

/**
 * Does a line or curve miss what the levels show? F of what factor(L) explains beyond the polynomial, both after blocks and
 * from the same rows, against the residual of the level fit.
 *
 * Refuses `no-lack-of-fit-df` when the curve has as many coefficients as there are levels (a curve through three levels).
 *
 * @example lackOfFit(line, fit) // {"ok": true, "f": 0, "df1": 1, "df2": 2, "p": 1} (the worked table lies on its line)
 */
export function lackOfFit(curve: PolynomialFit, levels: LevelFit): Answer<LackOfFit> {
  const df1 = curve.residual.df - levels.residual.df
  const df2 = levels.residual.df
  if (df1 <= 0) return refuse('no-lack-of-fit-df')
  const beyond = Math.max(0, curve.residual.sumOfSquares - levels.residual.sumOfSquares)
  const f = beyond / df1 / (levels.residual.sumOfSquares / df2)
  return { ok: true, f, df1, df2, p: fTails(f, df1, df2).upper }
}
