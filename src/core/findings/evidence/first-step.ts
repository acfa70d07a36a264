import { bendWeights, lineWeights } from '@/core/statistics/block-model/level-contrast.ts'
import { dunnettUpperQuantile } from '@/core/statistics/distributions/dunnett.ts'
import { evenLoadings } from '@/core/statistics/distributions/one-sided-dunnett.ts'
import { studentizedRangeUpperQuantile } from '@/core/statistics/distributions/studentized-range.ts'
import { tHalfWidth } from '@/core/statistics/distributions/students-t.ts'
import type { Allowance, Asked } from './evidence-shape.ts'

/** What is asked of a complete table of unit means. */
export interface FirstStepInput {
  values: readonly number[] | null
  usual: number | null
  asked: Asked
  allowance: Allowance
}

/**
 * What the first steps of the question show of a complete table of unit means, a row for each session and a column for each level, as a
 * word to compare by: the same as `primaryQuestion` says, without fitting. Empty when nothing is shown.
 */
export function firstStep(units: readonly (readonly number[])[], input: FirstStepInput): string {
  const sessions = units.length
  const levels = units[0]?.length ?? 0
  const df = (levels - 1) * (sessions - 1)
  const { means, meanSquare } = levelMeansOf(units)
  const { values, asked, allowance, usual } = input
  if (values === null || asked.question === 'usual')
    return pairWords(means, Math.sqrt((2 * meanSquare) / sessions), df, input, usual)
  const t = (weights: readonly number[]) => {
    const estimate = means.reduce((sum, mean, at) => sum + mean * (weights[at] as number), 0)
    const squares = weights.reduce((sum, weight) => sum + weight * weight, 0)
    return estimate / Math.sqrt((meanSquare / sessions) * squares)
  }
  const line = t(lineWeights(values))
  const rise = line > 0 ? 'rises' : 'falls'
  if (levels < 3) return Math.abs(line) >= tHalfWidth(1 - allowance.all, df) ? rise : ''
  const bend = t(bendWeights(values))
  const middle = bend < 0 ? 'high' : 'low'
  if (asked.question === 'line' || asked.question === 'bend') {
    const [expected, surprise] = [allowance.expected, allowance.surprise]
    const ofLine = asked.question === 'line' ? expected : surprise
    const ofBend = asked.question === 'bend' ? expected : surprise
    return [
      Math.abs(line) >= tHalfWidth(1 - ofLine, df) ? rise : '',
      Math.abs(bend) >= tHalfWidth(1 - ofBend, df) ? middle : '',
    ]
      .filter(Boolean)
      .join(' ')
  }
  const needed = dunnettUpperQuantile(allowance.all, [0, 0], df)
  if (Math.max(Math.abs(line), Math.abs(bend)) < needed) return ''
  return Math.abs(line) >= Math.abs(bend) ? rise : middle
}

function pairWords(
  means: readonly number[],
  se: number,
  df: number,
  { asked, allowance }: FirstStepInput,
  usual: number | null,
): string {
  const against = asked.question === 'usual' ? usual : null
  const levels = means.length
  const needed =
    against === null
      ? studentizedRangeUpperQuantile(allowance.all, levels, df) / Math.SQRT2
      : dunnettUpperQuantile(allowance.all, evenLoadings(levels - 1), df)
  const words: string[] = []
  for (const [a, one] of means.entries())
    for (const [b, other] of means.entries()) {
      if (a >= b || (against !== null && a !== against && b !== against)) continue
      if (Math.abs(other - one) >= needed * se) words.push(`${a}${other > one ? '<' : '>'}${b}`)
    }
  return words.join(' ')
}

function levelMeansOf(units: readonly (readonly number[])[]) {
  const levels = units[0]?.length ?? 0
  const means = Array.from({ length: levels }, (_, level) =>
    units.reduce((sum, row) => sum + (row[level] as number) / units.length, 0),
  )
  const grand = means.reduce((sum, mean) => sum + mean / levels, 0)
  let left = 0
  for (const row of units) {
    const own = row.reduce((sum, value) => sum + value / levels, 0)
    for (const [level, value] of row.entries())
      left += (value - own - (means[level] as number) + grand) ** 2
  }
  return { means, meanSquare: left / ((levels - 1) * (units.length - 1)) }
}
