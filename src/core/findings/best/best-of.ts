import { type Absent, absent } from '@/core/findings/reason.ts'
import type { Best, Curve, Trend } from '@/core/findings/rungs/rung-shape.ts'
import { levelValues } from '@/core/findings/rungs/trend-of.ts'
import type { LevelsPresent } from '@/core/findings/table/levels-present.ts'
import { type Cells, gatherCells } from '@/core/statistics/block-model/cells.ts'
import type { LevelFit } from '@/core/statistics/block-model/level-fit.ts'
import type { LevelRows } from '@/core/statistics/block-model/rows.ts'
import { lackOfFit } from '@/core/statistics/curve/lack-of-fit.ts'
import { fitPolynomial, type PolynomialFit } from '@/core/statistics/curve/polynomial-fit.ts'
import { vertexOf } from '@/core/statistics/curve/vertex.ts'
import type { Better } from '@/core/trial/response.ts'
import { bestAnswer } from './best-answer.ts'
import { crossingOfTarget } from './crossing-of-target.ts'

export interface BestInput {
  rows: LevelRows
  cells: Cells
  fit: LevelFit
  present: LevelsPresent
  handled: ArrayLike<number>
  trend: Trend | Absent
  better: Better
}

/**
 * Where is the best? y ~ block + L + L^2 in raw levels: vertex with delta and Fieller sets, lack of fit against
 * factor(L), the same curve over the levels as handled, and for a response with a target where it is met. From three levels up.
 */
export function bestOf(input: BestInput): Best | Absent {
  const values = levelValues(input.present)
  const curve = fitPolynomial(input.cells, values, 2)
  if (!curve.ok) return absent(curve.reason)
  const facts = curveFacts(curve)
  const missed = lackOfFit(curve, input.fit)
  const { better } = input
  const crossing =
    better.is === 'target' ? crossingOfTarget(input.cells, values, curve, better.at) : undefined
  return {
    answer: bestAnswer({ curve: facts, trend: input.trend, values, better, crossing }),
    ...facts,
    lackOfFit: missed.ok
      ? { f: missed.f, df1: missed.df1, df2: missed.df2, p: missed.p }
      : absent(missed.reason),
    asHandled: asHandled(input),
    ...(crossing ? { crossing } : {}),
  }
}

function curveFacts(fit: PolynomialFit): Curve {
  const [, linear, quadratic] = fit.raw.coefficients as [number, number, number]
  const turn = vertexOf(fit)
  if (!turn.ok) {
    const none = absent(turn.reason)
    return { linear, quadratic, vertex: none, delta: none, fieller: none }
  }
  const { low, high } = turn.delta
  return { linear, quadratic, vertex: turn.vertex, delta: { low, high }, fieller: turn.fieller }
}

function asHandled({ rows, handled }: BestInput): Curve | Absent {
  const known = Float64Array.from(handled)
  if (known.some(Number.isNaN)) return absent('not-logged')
  const values = [...new Set(known)].toSorted((a, b) => a - b)
  const code = new Map(values.map((value, at) => [value, at]))
  const level = Int32Array.from(known, (value) => code.get(value) as number)
  const cells = gatherCells({ ...rows, level, levelCount: values.length })
  const curve = fitPolynomial(cells, values, 2)
  return curve.ok ? curveFacts(curve) : absent(curve.reason)
}
