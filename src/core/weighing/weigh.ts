import type { Scale } from '@/core/kitchen/kitchen-record.ts'
import { pickScale } from '@/core/kitchen/pick-scale.ts'
import {
  fixedErrorGrams,
  gainError,
  scaleErrorGrams,
  taredUncertaintyGrams,
} from '@/core/kitchen/reading-uncertainty.ts'
import { roundToStep } from '@/core/units/round-to-step.ts'

/** Past this relative standard uncertainty a weight wants a dry mix or a stock (common practice, no source). */
export const coarsePastShare = 0.05

export type WeighTrouble = 'no-scale' | 'over-capacity' | 'below-scale' | 'coarse' | 'below-zero'

export interface Weighing {
  targetGrams: number
  /** What the scale is to show; the target itself when no scale can show it. */
  grams: number
  scaleId: string | null
  resolutionGrams: number | null
  /** Standard uncertainty of the tared reading, d/√6; 0 where there is no scale to have one. */
  uncertaintyGrams: number
  /** Standard uncertainty from the scale's own error, which all batches weighed on it share; 0 where none is stated. */
  sharedUncertaintyGrams: number
  /** Both in quadrature against the target; null for a target of nothing. */
  relativeUncertainty: number | null
  trouble: WeighTrouble | null
}

/**
 * One weight on the baker's scales: the finest that holds it, rounded to its step. A weight past every capacity is rounded
 * to the roomiest scale's step, to be weighed in several goes; each go has its own reading error, counted as such.
 */
export function weigh(targetGrams: number, scales: readonly Scale[]): Weighing {
  const picked = pickScale(targetGrams, scales)
  const scale = picked.ok ? picked.scale : roomiest(scales)
  if (targetGrams < 0) return unweighed(targetGrams, 'below-zero')
  if (!scale) return unweighed(targetGrams, 'no-scale')
  const { id: scaleId, resolutionGrams, capacityGrams } = scale
  const goes = goesFor(targetGrams, capacityGrams)
  const uncertaintyGrams = taredUncertaintyGrams(resolutionGrams) * Math.sqrt(goes)
  const grams = roundToStep(targetGrams, resolutionGrams)
  const sharedUncertaintyGrams = goes * scaleErrorGrams(scale, targetGrams / goes)
  const both = Math.hypot(uncertaintyGrams, sharedUncertaintyGrams)
  const relativeUncertainty = targetGrams > 0 ? both / targetGrams : null
  const trouble = troubleOf(goes > 1, targetGrams, grams, relativeUncertainty ?? 0)
  return {
    targetGrams,
    grams,
    scaleId,
    resolutionGrams,
    uncertaintyGrams,
    sharedUncertaintyGrams,
    relativeUncertainty,
    trouble,
  }
}

/** What no scale weighs. */
export function unweighed(grams: number, trouble: WeighTrouble | null): Weighing {
  const sure = { uncertaintyGrams: 0, sharedUncertaintyGrams: 0, relativeUncertainty: null }
  return { targetGrams: grams, grams, scaleId: null, resolutionGrams: null, ...sure, trouble }
}

/** Standard uncertainty of a reading, the scale's own error in it. */
export function readingUncertainty(one: Weighing): number {
  return Math.hypot(one.uncertaintyGrams, one.sharedUncertaintyGrams)
}

/** In how many goes a weight is weighed on a scale: one where the scale holds it. Both in grams. */
export function goesFor(targetGrams: number, capacityGrams: number): number {
  return Math.max(1, Math.ceil(targetGrams / capacityGrams))
}

function troubleOf(
  over: boolean,
  target: number,
  grams: number,
  relative: number,
): WeighTrouble | null {
  if (over) return 'over-capacity'
  if (target > 0 && grams === 0) return 'below-scale'
  return relative > coarsePastShare ? 'coarse' : null
}

function roomiest(scales: readonly Scale[]): Scale | undefined {
  return scales.toSorted((a, b) => b.capacityGrams - a.capacityGrams)[0]
}

/**
 * The least mass some scale weighs to a relative standard uncertainty: √(d²/6 + its fixed error²) / √(share² − its error in
 * proportion²), where that fits its capacity.
 */
export function leastWeighableGrams(scales: readonly Scale[], share: number): number | null {
  const least = scales
    .map((scale) => {
      const fixed = Math.hypot(taredUncertaintyGrams(scale.resolutionGrams), fixedErrorGrams(scale))
      return { scale, grams: fixed / Math.sqrt(Math.max(0, share ** 2 - gainError(scale) ** 2)) }
    })
    .filter(({ scale, grams }) => grams <= scale.capacityGrams)
    .map(({ grams }) => grams)
  return least.length > 0 ? Math.min(...least) : null
}
