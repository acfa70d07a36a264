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
/** At most this share of a batch's own water (or flour) comes by way of the dose. */
const mostCarrierShare = 0.5

/** What one batch needs of the ingredient, and how much of the carrier it has to give in exchange. */
export interface DoseAsked {
  key: string
  ingredientGrams: number
  carrierGrams: number
}

export interface SharedDoseRecipe {
  ok: true
  ingredientId: string
  by: SharedDose['by']
  /** The water (stock) or flour (dry mix) the ingredient is dispersed in: part of the recipe, taken off each batch's own. */
  carrierId: string
  ingredient: Weighing
  carrier: Weighing
  /** Grams of the ingredient in a gram of the stock or mix. */
  strength: number
  /** Standard uncertainty of the strength: the same slip for every batch. */
  strengthUncertainty: number
  doses: (Weighing & { key: string; ingredientGrams: number; carrierGrams: number })[]
  leftoverGrams: number
  /** Relative standard uncertainty of the ingredient in the worst batch: shared and own slips together, and own alone. */
  relativeUncertainty: number
  ownRelativeUncertainty: number
}

export type SharedDoseAnswer =
  | SharedDoseRecipe
  | {
      ok: false
      reason: 'no-scale' | 'nothing-to-dose' | 'no-carrier'
      ingredientId: string
      by: SharedDose['by']
    }

/**
 * One stock (in recipe water) or one dry mix (in recipe flour) of an ingredient too small for the scale: a g of it in b g of
 * carrier, of which every batch gets c g, bringing c a/(a+b) of the ingredient and c b/(a+b) of the carrier. Amounts are
 * large enough for the scales, with a tenth over. A plan's own a, b and c are taken where it states them. u(a) and u(b) are
 * common to all batches, u(c) is each batch's own.
 */
export function sharedDose(
  dose: SharedDose,
  carrierId: string | null,
  asked: readonly DoseAsked[],
  scales: readonly Scale[],
): SharedDoseAnswer {
  const { ingredientId, by } = dose
  const refuse = (reason: 'no-scale' | 'nothing-to-dose' | 'no-carrier') =>
    ({ ok: false, reason, ingredientId, by }) as const
  if (scales.length === 0) return refuse('no-scale')
  if (carrierId === null) return refuse('no-carrier')
  const wanted = asked.filter(({ ingredientGrams }) => ingredientGrams > 0)
  if (wanted.length === 0) return refuse('nothing-to-dose')
  const { ingredient, carrier } = mixed(dose, wanted, scales)
  const total = ingredient.grams + carrier.grams
  if (!(ingredient.grams > 0 && carrier.grams > 0)) return refuse('nothing-to-dose')
  const strength = ingredient.grams / total
  const strengthUncertainty =
    Math.hypot(
      carrier.grams * ingredient.uncertaintyGrams,
      ingredient.grams * carrier.uncertaintyGrams,
    ) /
    total ** 2
  const doses = wanted.map(({ key, ingredientGrams }) => {
    const weighing = weigh(dose.doseGrams ?? ingredientGrams / strength, scales)
    const { grams } = weighing
    return {
      ...weighing,
      key,
      ingredientGrams: grams * strength,
      carrierGrams: grams * (1 - strength),
    }
  })
  const own = Math.max(...doses.map(({ relativeUncertainty }) => relativeUncertainty ?? 0))
  return {
    ok: true,
    ingredientId,
    by,
    carrierId,
    ingredient,
    carrier,
    strength,
    strengthUncertainty,
    doses,
    leftoverGrams: total - doses.reduce((sum, { grams }) => sum + grams, 0),
    relativeUncertainty: Math.hypot(own, strengthUncertainty / strength),
    ownRelativeUncertainty: own,
  }
}

function mixed(dose: SharedDose, asked: readonly DoseAsked[], scales: readonly Scale[]) {
  if (dose.stockGrams !== undefined && dose.stockWaterGrams !== undefined) {
    return {
      ingredient: weigh(dose.stockGrams, scales),
      carrier: weigh(dose.stockWaterGrams, scales),
    }
  }
  const parts = carrierParts(dose.by, asked, scales)
  const needed = asked.reduce((sum, { ingredientGrams }) => sum + ingredientGrams, 0)
  const least = leastWeighableGrams(scales, wantedSharedShare[dose.by]) ?? 0
  const ingredient = weighUp(Math.max(needed * (1 + overageShare), least), scales)
  return { ingredient, carrier: weighUp(ingredient.grams * parts, scales) }
}

/** Parts of carrier to one of the ingredient: enough to weigh the smallest dose, little enough for every batch's own water. */
function carrierParts(
  by: SharedDose['by'],
  asked: readonly DoseAsked[],
  scales: readonly Scale[],
): number {
  const smallest = Math.min(...asked.map(({ ingredientGrams }) => ingredientGrams))
  const least = leastWeighableGrams(scales, wantedShare[by]) ?? 0
  const most = Math.min(
    ...asked.map(
      ({ ingredientGrams, carrierGrams }) => (carrierGrams * mostCarrierShare) / ingredientGrams,
    ),
  )
  const fewest = by === 'dry-mix' ? leastDryParts : 0
  const fitting = dilutions.filter((parts) => parts >= fewest && parts <= most)
  const weighable = fitting.find((parts) => smallest * (parts + 1) >= least)
  return weighable ?? fitting.at(-1) ?? dilutions[0]
}

/** Rounded up to the scale, so that the mix is never short. */
function weighUp(grams: number, scales: readonly Scale[]): Weighing {
  const near = weigh(grams, scales)
  const step = near.resolutionGrams ?? 0
  if (near.grams >= grams || step === 0) return near
  return weigh(roundToStep(near.grams + step, step), scales)
}
