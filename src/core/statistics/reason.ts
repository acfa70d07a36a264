/**
 * Every way in which a computation may have no answer, as a closed union. Only `core/wording` turns them into sentences.
 *
 * - `no-rows`: nothing was handed in. `one-level`, `one-block`: nothing to compare, or nothing to compare across.
 * - `level-without-rows`: a level was named and has no row. `levels-not-connected`: no chain of blocks links all levels.
 * - `no-residual-df`: as many unknowns as rows. `no-residual-variance`: the model fits every row exactly. `all-equal`: all rows are the same.
 * - `level-values-equal`: the levels do not differ within any block. `needs-three-levels`: a curve wants at least three of them.
 * - `covariate-not-separable`: the covariate is constant within blocks or follows the levels exactly.
 * - `no-lack-of-fit-df`: the curve has as many coefficients as there are levels. `no-curvature`, `no-slope`: the coefficient is numerically zero.
 * - `no-complete-block`: every block lacks a level. `too-few-clusters`: too few tasters or sessions to draw from. `no-resample-had-a-best`: none gave a curve.
 * - `group-empty`: nobody is in the group. `group-not-separable`: the group never meets its counterpart under one taster and level.
 * - `constant-values`, `too-few-values`: a correlation or interval has nothing to stand on. `never-reached`: no count or size reaches what is asked.
 */
export type StatisticsReason =
  | 'no-rows'
  | 'one-level'
  | 'one-block'
  | 'level-without-rows'
  | 'levels-not-connected'
  | 'no-residual-df'
  | 'no-residual-variance'
  | 'all-equal'
  | 'level-values-equal'
  | 'needs-three-levels'
  | 'covariate-not-separable'
  | 'no-lack-of-fit-df'
  | 'no-curvature'
  | 'no-slope'
  | 'no-complete-block'
  | 'too-few-clusters'
  | 'no-resample-had-a-best'
  | 'group-empty'
  | 'group-not-separable'
  | 'constant-values'
  | 'too-few-values'
  | 'never-reached'

export type Refusal = { ok: false; reason: StatisticsReason }

/** A result record marked `ok`, or the reason why there is none. */
export type Answer<Result> = ({ ok: true } & Result) | Refusal

/**
 * The refusal for a reason.
 *
 * @example refuse('no-rows') // {"ok": false, "reason": "no-rows"} (by definition)
 */
export function refuse(reason: StatisticsReason): Refusal {
  return { ok: false, reason }
}
