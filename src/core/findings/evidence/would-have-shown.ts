import {
  bendWeights,
  levelContrast,
  lineWeights,
} from '@/core/statistics/block-model/level-contrast.ts'
import { levelDifference } from '@/core/statistics/block-model/level-difference.ts'
import { dunnettUpperQuantile } from '@/core/statistics/distributions/dunnett.ts'
import { studentizedRangeUpperQuantile } from '@/core/statistics/distributions/studentized-range.ts'
import { tHalfWidth } from '@/core/statistics/distributions/students-t.ts'
import { noncentralityShown } from '@/core/statistics/power/noncentrality-shown.ts'
import type { Conclusion } from './conclusion-shape.ts'
import type { QuestionInput } from './primary-question.ts'

/**
 * The least difference that the first step of the question would have shown with power 0.8, by the spread that was found: for a line the rise
 * from the first to the last level, for a bend how high a parabola's top stands over both ends, for pairs one pair's difference.
 */
export function wouldHaveShown({
  fit,
  values,
  asked,
  allowance,
  levelIds,
}: QuestionInput): NonNullable<Conclusion['wouldShow']> {
  const df = fit.df2
  if (values === null || asked.question === 'usual') {
    const { se } = levelDifference(fit, 0, 1)
    const factor = studentizedRangeUpperQuantile(allowance.all, levelIds.length, df) / Math.SQRT2
    return { of: 'pair', size: noncentralityShown(factor, df) * se }
  }
  const range = Math.max(...values) - Math.min(...values)
  const plain = asked.question === 'line' || asked.question === 'bend'
  const factor =
    values.length < 3
      ? tHalfWidth(1 - allowance.all, df)
      : plain
        ? tHalfWidth(1 - allowance.expected, df)
        : dunnettUpperQuantile(allowance.all, [0, 0], df)
  if (asked.question === 'bend' && values.length > 2) {
    const weights = bendWeights(values)
    const middle = (Math.max(...values) + Math.min(...values)) / 2
    const hump = values.map((value) => 1 - ((2 * (value - middle)) / range) ** 2)
    const ofOne = Math.abs(hump.reduce((sum, height, at) => sum + height * (weights[at] ?? 0), 0))
    const { se } = levelContrast(fit, weights)
    return { of: 'hump', size: (noncentralityShown(factor, df) * se) / ofOne }
  }
  const { se } = levelContrast(fit, lineWeights(values))
  return { of: 'rise', size: noncentralityShown(factor, df) * se * range }
}
