import type { Scale } from '@/core/kitchen/kitchen-record.ts'
import type { SharedDose } from '@/core/trial/plan-record.ts'
import { type DoseAmounts, type DoseAsked, doseAmounts } from './dose-amounts.ts'
import type { DoseStage } from './dose-asked.ts'
import { readingUncertainty, type Weighing, weigh } from './weigh.ts'

export interface SharedDoseRecipe {
  ok: true
  ingredientId: string
  by: SharedDose['by']
  /** The stage it is made for, where another has a stock of its own. */
  stage: DoseStage | null
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

export type SharedDoseTrouble =
  | 'no-scale'
  | 'nothing-to-dose'
  | 'no-carrier'
  | 'too-little-carrier'
  | 'scales-too-coarse'

export type SharedDoseAnswer =
  | SharedDoseRecipe
  | {
      ok: false
      reason: SharedDoseTrouble
      ingredientId: string
      by: SharedDose['by']
      stage: DoseStage | null
    }

/**
 * One stock (in recipe water) or one dry mix (in recipe flour) of an ingredient too small for the scale: a g of it in b g of
 * carrier, of which every batch gets c g, bringing c a/(a+b) of the ingredient and c b/(a+b) of the carrier. Amounts are
 * large enough for the scales, with a tenth over (`doseAmounts`). A plan's own a, b and c are taken where it states them.
 * u(a) and u(b) are common to all batches, u(c) is each batch's own.
 */
export function sharedDose(
  dose: SharedDose,
  carrierId: string | null,
  asked: readonly DoseAsked[],
  scales: readonly Scale[],
  stage: DoseStage | null = null,
): SharedDoseAnswer {
  const { ingredientId, by } = dose
  const refuse = (reason: SharedDoseTrouble) =>
    ({ ok: false, reason, ingredientId, by, stage }) as const
  if (scales.length === 0) return refuse('no-scale')
  if (carrierId === null) return refuse('no-carrier')
  const wanted = asked.filter(({ ingredientGrams }) => ingredientGrams > 0)
  if (wanted.length === 0) return refuse('nothing-to-dose')
  const amounts = mixed(dose, wanted, scales)
  if (!amounts.ok) return refuse(amounts.reason)
  const { ingredient, carrier } = amounts
  const total = ingredient.grams + carrier.grams
  if (!(ingredient.grams > 0 && carrier.grams > 0)) return refuse('nothing-to-dose')
  const strength = ingredient.grams / total
  const strengthUncertainty =
    Math.hypot(
      carrier.grams * readingUncertainty(ingredient),
      ingredient.grams * readingUncertainty(carrier),
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
  const own = Math.max(
    ...doses.map((each) => (each.targetGrams > 0 ? each.uncertaintyGrams / each.targetGrams : 0)),
  )
  return {
    ok: true,
    ingredientId,
    by,
    stage,
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

function mixed(
  dose: SharedDose,
  asked: readonly DoseAsked[],
  scales: readonly Scale[],
): DoseAmounts {
  if (dose.stockGrams !== undefined && dose.stockWaterGrams !== undefined) {
    const ingredient = weigh(dose.stockGrams, scales)
    return { ok: true, ingredient, carrier: weigh(dose.stockWaterGrams, scales) }
  }
  return doseAmounts(dose.by, asked, scales)
}
