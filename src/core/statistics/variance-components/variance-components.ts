import { type Answer, refuse } from '@/core/statistics/reason.ts'
import type { ScatterSum, ScatterSums } from './scatter-sums.ts'

export interface VarianceComponent {
  /** Negative estimates count as 0. */
  variance: number
  /** As the equations gave it, below zero when chance made it so. */
  unbiased: number
  /** Degrees of freedom of the sum of squares that it stands on. */
  df: number
}

export interface VarianceComponents {
  residual: Answer<VarianceComponent>
  tasterLevel: Answer<VarianceComponent>
  piece: Answer<VarianceComponent>
  batch: Answer<VarianceComponent>
}

/**
 * Variance components by the method of moments (analysis of variance) from one table or several: the sums of squares, their
 * degrees of freedom and their expectations are added over the tables, so that each counts by its degrees of freedom, and
 * each sum is set equal to its expectation, the residual first. Negative estimates are set to 0 at the very end: the other
 * equations use them as they are. Refuses a component without degrees of freedom, and one whose equation holds another
 * that has no answer (`no-residual-df`).
 *
 * @example varianceComponents([scatterSums(scatter)]).batch // {"ok": false} (one batch a level: no degrees of freedom)
 */
export function varianceComponents(tables: readonly ScatterSums[]): VarianceComponents {
  const sums = {
    residual: added(tables.map((table) => table.residual)),
    tasterLevel: added(tables.map((table) => table.tasterLevel)),
    piece: added(tables.map((table) => table.piece)),
    batch: added(tables.map((table) => table.batch)),
  }
  const residual = solved(sums.residual, sums.residual.df, [])
  const taste = solved(sums.tasterLevel, sums.tasterLevel.tasterLevel, [
    [residual, sums.tasterLevel.df],
  ])
  const piece = solved(sums.piece, sums.piece.piece, [[residual, sums.piece.df]])
  const batch = solved(sums.batch, sums.batch.batch, [
    [residual, sums.batch.df],
    [piece, sums.batch.piece],
  ])
  return { residual, tasterLevel: taste, piece, batch }
}

function solved(
  sum: ScatterSum,
  weight: number,
  known: readonly (readonly [Answer<VarianceComponent>, number])[],
): Answer<VarianceComponent> {
  if (sum.df === 0 || !(weight > 0)) return refuse('no-residual-df')
  let left = sum.squares
  for (const [component, times] of known) {
    if (times <= 0) continue
    if (!component.ok) return component
    left -= times * component.unbiased
  }
  const unbiased = left / weight
  return { ok: true, variance: Math.max(0, unbiased), unbiased, df: sum.df }
}

function added(sums: readonly ScatterSum[]): ScatterSum {
  const total: ScatterSum = { squares: 0, df: 0, tasterLevel: 0, piece: 0, batch: 0 }
  for (const one of sums) {
    total.squares += one.squares
    total.df += one.df
    total.tasterLevel += one.tasterLevel
    total.piece += one.piece
    total.batch += one.batch
  }
  return total
}
