import { type Absent, isPresent } from '@/core/findings/reason.ts'
import type { Best, Curve, FiellerSet } from '@/core/findings/rungs/rung-shape.ts'
import type { LevelName } from '@/core/findings/table/score-table.ts'
import { decimalText, plainNumber, probabilityText, withUnit } from '@/core/units/number-text.ts'
import { placeText } from '@/core/wording/words/level-text.ts'
import { reasonText } from './reason-text.ts'

/**
 * The numbers behind where the best lies, also where none is claimed: the curve, its turning point with both sets, the test
 * of its fit, and the same curve over the levels as handled. `levels` are those that were tried.
 */
export function bestFigures(
  best: Best | Absent,
  levels: readonly LevelName[],
  unit: string,
): string[] {
  if (!isPresent(best)) return []
  const { lackOfFit, asHandled } = best
  return [
    `Curve: ${significant(best.linear)} × L, ${significant(best.quadratic)} × L²; ${turnText(best, levels, unit)}`,
    isPresent(lackOfFit)
      ? `Fit of the curve: F ${decimalText(lackOfFit.f, 2)} with ${plainNumber(lackOfFit.df1)} and ${plainNumber(lackOfFit.df2)} degrees of freedom, p ${probabilityText(lackOfFit.p)}.`
      : `Fit of the curve: ${reasonText(lackOfFit)}`,
    `Over the levels as handled: ${isPresent(asHandled) ? turnText(asHandled, levels, unit) : reasonText(asHandled)}`,
  ]
}

function turnText(
  { vertex, delta, fieller, quadratic }: Curve,
  levels: readonly LevelName[],
  unit: string,
): string {
  if (!isPresent(vertex)) return reasonText(vertex)
  const place = (value: number) => placeText(value, levels)
  const end = quadratic < 0 ? 'highest' : 'lowest'
  // A nearly straight line turns at places that mean nothing: their numbers would only look exact.
  const near = isNear(vertex, levels)
  const turns = near
    ? `${end} at ${withUnit(place(vertex), unit)}`
    : `${end} far outside the levels tried`
  const byDelta =
    near && isPresent(delta)
      ? `; by the delta method between ${place(delta.low)} and ${place(delta.high)}`
      : ''
  const byFieller = isPresent(fieller) ? `; by Fieller ${setText(fieller, place)}` : ''
  return `${turns}${byDelta}${byFieller}.`
}

/** No further from the levels tried than they are from each other. */
function isNear(place: number, levels: readonly LevelName[]): boolean {
  const values = levels.filter((level) => typeof level === 'number')
  const [lowest, highest] = [Math.min(...values), Math.max(...values)]
  const span = highest - lowest
  return place >= lowest - span && place <= highest + span
}

/** Fieller's set in its three shapes; of the second an arm may be missing. */
function setText({ kind, low, high }: FiellerSet, place: (value: number) => string): string {
  if (kind === 'interval' && low !== null && high !== null)
    return `between ${place(low)} and ${place(high)}`
  const arms = [
    ...(low === null ? [] : [`up to ${place(low)}`]),
    ...(high === null ? [] : [`from ${place(high)} on`]),
  ]
  return kind === 'outside' && arms.length > 0 ? `anywhere ${arms.join(' or ')}` : 'anywhere'
}

/** A coefficient with four figures, whatever its size. */
function significant(value: number): string {
  const size = Math.abs(value)
  const decimals = size === 0 ? 0 : Math.min(12, Math.max(0, 3 - Math.floor(Math.log10(size))))
  return decimalText(value, decimals)
}
