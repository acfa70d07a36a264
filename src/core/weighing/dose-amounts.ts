import type { Scale } from '@/core/kitchen/kitchen-record.ts'
import type { SharedDose } from '@/core/trial/plan-record.ts'
import { roundToStep } from '@/core/units/round-to-step.ts'
import { leastWeighableGrams, type Weighing, weigh } from './weigh.ts'

/** Mixed in surplus of what is dosed, for what sticks to the vessel (common practice). */
const overageShare = 0.1
/**
 * A dose is made large enough for this relative uncertainty, where the scales can: its slip is each batch's own. A dry mix,
 * whose remainder is flour lost to the trial, is content with the coarser.
 */
const wantedShare = { stock: 0.01, 'dry-mix': 0.02 } as const
/** The mix's own ingredient may be weighed less finely: its slip is the same for all batches and moves no level alone. */
const wantedSharedShare = { stock: 0.025, 'dry-mix': 0.04 } as const
/** Carrier per part of the ingredient: the first that makes the smallest dose weighable is taken. */
const dilutions = [4, 9, 19, 24, 49, 99, 199, 499, 999] as const
/** A dry mix of fewer parts than this is hard to mix evenly (common practice). */
const leastDryParts = 9
/**
 * At most this share of a batch's own water (or flour) comes by way of the dose, and a mix is made of at most this share of
 * all batches' own, with the surplus: what is left over stays below what the batches take (common practice, no source).
 */
const mostCarrierShare = 0.5
/** A mix less certain than this is not worth making: twice the limit for a weight of its own (convention of this notebook). */
const mostUncertainShare = 0.1

/** What one batch needs of the ingredient, and how much of the carrier it has to give in exchange. */
export interface DoseAsked {
  key: string
  ingredientGrams: number
  carrierGrams: number
}

export type DoseAmounts =
  | { ok: true; ingredient: Weighing; carrier: Weighing }
  | { ok: false; reason: 'too-little-carrier' | 'scales-too-coarse' }

type Candidate = { ingredient: Weighing; parts: number; own: number; shared: number }

/**
 * How much of the ingredient and of its carrier to mix, in amounts that the scales weigh: no more carrier than half of what
 * all batches take, with a tenth over. Where the scales cannot do it as finely as wanted, the surest within that. `asked`
 * holds amounts above zero. Refuses when half a batch's carrier cannot take the ingredient up, and when the scales are too
 * coarse: the surest mix would be off by more than a tenth, or need more carrier.
 */
export function doseAmounts(
  by: SharedDose['by'],
  asked: readonly DoseAsked[],
  scales: readonly Scale[],
): DoseAmounts {
  const fitting = fittingParts(by, asked)
  if (fitting.length === 0) return { ok: false, reason: 'too-little-carrier' }
  const mostCarrier = sumOf(asked, 'carrierGrams') * mostCarrierShare * (1 + overageShare)
  const needed = weighUp(sumOf(asked, 'ingredientGrams') * (1 + overageShare), scales)
  const wanted = weighUp(leastWeighableGrams(scales, wantedSharedShare[by]) ?? 0, scales)
  const smallest = Math.min(...asked.map(({ ingredientGrams }) => ingredientGrams))
  const candidates = fitting.flatMap((parts): Candidate[] => {
    const most = weighDown(mostCarrier / parts, scales)
    if (needed.grams > most.grams) return []
    const [ingredient] = [needed, wanted.grams > most.grams ? most : wanted].toSorted(
      (a, b) => b.grams - a.grams,
    )
    if (!ingredient) return []
    const own = weigh(smallest * (parts + 1), scales).relativeUncertainty ?? 0
    return [{ ingredient, parts, own, shared: ingredient.relativeUncertainty ?? 0 }]
  })
  const asWanted = candidates.find(
    ({ own, shared }) => own <= wantedShare[by] && shared <= wantedSharedShare[by],
  )
  const [surest] = candidates.toSorted((a, b) => uncertaintyOf(a) - uncertaintyOf(b))
  const taken = asWanted ?? surest
  if (!taken || uncertaintyOf(taken) > mostUncertainShare)
    return { ok: false, reason: 'scales-too-coarse' }
  const { ingredient, parts } = taken
  return { ok: true, ingredient, carrier: weighUp(ingredient.grams * parts, scales) }
}

function uncertaintyOf({ own, shared }: Candidate): number {
  return Math.hypot(own, shared)
}

/** Parts of carrier to one of the ingredient that half of every batch's own carrier holds. */
function fittingParts(by: SharedDose['by'], asked: readonly DoseAsked[]): number[] {
  const most = Math.min(
    ...asked.map(
      ({ ingredientGrams, carrierGrams }) => (carrierGrams * mostCarrierShare) / ingredientGrams,
    ),
  )
  const fewest = by === 'dry-mix' ? leastDryParts : 0
  return dilutions.filter((parts) => parts >= fewest && parts <= most)
}

/** Rounded up to the scale, so that the mix is never short. */
function weighUp(grams: number, scales: readonly Scale[]): Weighing {
  const near = weigh(grams, scales)
  const step = near.resolutionGrams ?? 0
  if (near.grams >= grams || step === 0) return near
  return weigh(roundToStep(near.grams + step, step), scales)
}

/** Rounded down to the scale, so that a bound is never passed. */
function weighDown(grams: number, scales: readonly Scale[]): Weighing {
  const near = weigh(grams, scales)
  const step = near.resolutionGrams ?? 0
  if (near.grams <= grams || step === 0) return near
  return weigh(Math.max(0, roundToStep(near.grams - step, step)), scales)
}

function sumOf(asked: readonly DoseAsked[], what: 'ingredientGrams' | 'carrierGrams'): number {
  return asked.reduce((sum, one) => sum + one[what], 0)
}
