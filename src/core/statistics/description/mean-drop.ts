import type { LevelRows } from '@/core/statistics/block-model/rows.ts'
import { rowsAsCells } from '@/core/statistics/block-model/rows-as-cells.ts'
import { tHalfWidth, tTwoSidedP } from '@/core/statistics/distributions/students-t.ts'
import { blockedLeastSquares } from '@/core/statistics/least-squares/blocked-least-squares.ts'
import { residualOf } from '@/core/statistics/least-squares/residual.ts'
import { type Answer, refuse } from '@/core/statistics/reason.ts'

/** How much lower a response is in one group of rows than in another, under the same block and level. */
export type MeanDrop = {
  drop: number
  se: number
  df: number
  low: number
  high: number
  p: number
  inGroup: number
  inReference: number
}

/**
 * Mean of the reference rows less mean of the group's rows (liking where it was just right, less liking where it was too
 * little), within block and level: the coefficient of the group in y ~ block + factor(level) + group, with its plain t
 * interval. `rows` hold the two groups only; `isGroup` says which row is in the group. One block and one level give the
 * ordinary difference of two means with pooled variance.
 *
 * Refuses `group-empty` when either is empty, `group-not-separable` when no block and level tells them apart, and what
 * `residualOf` refuses. How large a group must be is for the caller to judge.
 *
 * @example meanDrop({ y: [5, 6, 8, 9], block: [0, 0, 0, 0], level: [0, 0, 0, 0], blockCount: 1, levelCount: 1 }, [true, true, false, false]) // {"ok": true, "drop": 3, "se": 0.7071, "df": 2} (two means with pooled variance 1/2)
 */
export function meanDrop(
  rows: LevelRows,
  isGroup: readonly boolean[],
  confidence = 0.95,
): Answer<MeanDrop> {
  const inGroup = isGroup.filter(Boolean).length
  const inReference = isGroup.length - inGroup
  if (inGroup === 0 || inReference === 0) return refuse('group-empty')
  const cells = rowsAsCells(rows)
  const group = Float64Array.from(isGroup, (one) => (one ? 1 : 0))
  const columns = [...new Set(cells.level)]
    .slice(1)
    .map((level) => Float64Array.from(cells.level, (code) => (code === level ? 1 : 0)))
  let result = blockedLeastSquares(cells, [...columns, group])
  while (!result.ok && result.dependent < columns.length) {
    columns.splice(result.dependent, 1)
    result = blockedLeastSquares(cells, [...columns, group])
  }
  if (!result.ok) return refuse('group-not-separable')
  const { fit } = result
  const df = cells.rowCount - fit.blockCount - columns.length - 1
  const checked = residualOf(fit.residualSumOfSquares, df, cells.lowest, cells.highest)
  if (!checked.ok) return checked
  const at = columns.length
  const drop = -(fit.coefficients[at] as number)
  const se = checked.residual.sd * Math.sqrt(fit.unscaled[at]?.[at] as number)
  const half = tHalfWidth(confidence, df) * se
  const p = tTwoSidedP(drop / se, df)
  return { ok: true, drop, se, df, low: drop - half, high: drop + half, p, inGroup, inReference }
}
