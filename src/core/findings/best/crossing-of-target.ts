import { type Absent, absent } from '@/core/findings/reason.ts'
import type { Crossing } from '@/core/findings/rungs/rung-shape.ts'
import type { Cells } from '@/core/statistics/block-model/cells.ts'
import { crossingOf } from '@/core/statistics/curve/crossing.ts'
import { fitPolynomial, type PolynomialFit } from '@/core/statistics/curve/polynomial-fit.ts'
import { vertexOf } from '@/core/statistics/curve/vertex.ts'

/**
 * Where the response meets its target: on the curve when its bend shows (Fieller's set of the vertex is an interval), else
 * on the line.
 */
export function crossingOfTarget(
  cells: Cells,
  values: readonly number[],
  curve: PolynomialFit,
  target: number,
): Crossing | Absent {
  const turn = vertexOf(curve)
  const bends = turn.ok && turn.fieller.kind === 'interval'
  const line = bends ? null : fitPolynomial(cells, values, 1)
  if (line && !line.ok) return absent(line.reason)
  const met = crossingOf(line ?? curve, target)
  if (!met.ok) return absent(met.reason)
  return { target, of: bends ? 'curve' : 'line', at: met.at, stretches: met.stretches }
}
