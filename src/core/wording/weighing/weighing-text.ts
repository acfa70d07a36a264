import type { Plan } from '@/core/trial/plan-record.ts'
import { massText, scaleStepText, weightText } from '@/core/units/mass-text.ts'
import { decimalText } from '@/core/units/number-text.ts'
import type { DoseAdvice } from '@/core/weighing/dose-advice.ts'
import type {
  SharedDoseAnswer,
  SharedDoseRecipe,
  SharedDoseTrouble,
} from '@/core/weighing/shared-dose.ts'
import type { Weighing } from '@/core/weighing/weigh.ts'

const refusals = {
  'no-scale': 'no scale is given',
  'nothing-to-dose': 'no batch takes any',
  'no-carrier': 'there is no flour or water, the same in every batch, to carry it',
  'too-little-carrier': 'there is too little flour or water, the same in every batch, to carry it',
  'scales-too-coarse':
    'these scales are too coarse for it. Use a finer scale or make larger batches',
} as const satisfies Record<SharedDoseTrouble, string>

/** A reading as its scale shows it, with its unit: "1.50 g". */
function readingText(weighing: Pick<Weighing, 'grams' | 'resolutionGrams'>): string {
  return weightText(weighing.grams, weighing.resolutionGrams)
}

/** That a weight is so small that the scales show nothing of it. */
export const belowScaleText = (name: string, grams: number) =>
  `${name}: ${massText(grams, 2)} is less than these scales can show.`

/** That the scales weigh it, with how large an error. */
export const coarseText = (name: string, grams: number, relativeUncertainty: number) =>
  `${name}: ${massText(grams, 2)} is uncertain by ${shareText(relativeUncertainty)} on these scales.`

/** How the shared dry mix or stock is made and dosed, or why it cannot be. */
export function sharedDoseText(dose: SharedDoseAnswer, plan: Pick<Plan, 'formula'>): string {
  const name = nameOf(plan, dose.ingredientId)
  const what = mixName(dose.by)
  const stage = stageText(dose, plan)
  if (!dose.ok) return `${name}${stage}: no ${what} can be made, ${refusals[dose.reason]}.`
  return `${name}${stage}, one ${what} for all: ${recipeText(dose, plan)}. What carries it is taken off each batch. Its strength is common to all batches; each dose is off by about ${shareText(dose.ownRelativeUncertainty)}.`
}

/** Which ingredient the scales weigh too coarsely, and the dry mix or stock that mends it. */
export function doseAdviceText(advice: DoseAdvice, plan: Pick<Plan, 'formula'>): string {
  const coarse = advice.belowScale
    ? belowScaleText(advice.name, advice.smallestGrams)
    : coarseText(advice.name, advice.smallestGrams, advice.relativeUncertainty)
  const better = advice.better === 'stock' ? advice.stock : advice.dryMix
  if (!better.ok) return `${coarse} ${unmendedText(advice, better.reason)}`
  const { mendingStepGrams: step } = advice
  const still = step === null ? '' : ` A scale that shows ${scaleStepText(step)} would do better.`
  const several = advice.better === 'stock' && advice.stocks.length > 1
  const recipes = (several ? advice.stocks : [better]).flatMap((one) =>
    one.ok ? `${stageText(one, plan).replace(', ', '')} ${recipeText(one, plan)}`.trim() : [],
  )
  const one = several ? 'One stock for each stage' : `One ${mixName(advice.better)} for all batches`
  return `${coarse} ${one} would bring it to ${shareText(better.relativeUncertainty)}: ${recipes.join('; ')}.${still}`
}

/** Which stage a stock is made for, where each has its own: ", for the poolish". */
function stageText(
  { stage }: Pick<SharedDoseAnswer, 'stage'>,
  plan: Pick<Plan, 'formula'>,
): string {
  if (!stage) return ''
  const into = plan.formula.preferments.find(({ id }) => id === stage.prefermentId)
  return into ? `, for the ${into.name}` : ', for the dough, made fresh at its mix'
}

/** That neither mix nor stock helps here, and which scale or what else would. */
function unmendedText({ mendingStepGrams }: DoseAdvice, reason: SharedDoseTrouble): string {
  const mend =
    mendingStepGrams === null
      ? 'Make larger batches.'
      : `A scale that shows ${scaleStepText(mendingStepGrams)} would do, or larger batches.`
  return reason === 'scales-too-coarse'
    ? `No dry mix or stock mends that with these scales. ${mend}`
    : mend
}

function recipeText(recipe: SharedDoseRecipe, plan: Pick<Plan, 'formula'>): string {
  const carrier = nameOf(plan, recipe.carrierId).toLowerCase()
  const made = `${readingText(recipe.ingredient)} into ${readingText(recipe.carrier)} of ${carrier}`
  const [dose, ...others] = new Set(recipe.doses.map(readingText))
  const each = others.length === 0 ? `${dose} of it to every batch` : 'its share to every batch'
  const left =
    recipe.leftoverGrams >= 1 ? `; about ${massText(recipe.leftoverGrams, 0)} stay over` : ''
  return `${made}, ${each}${left}`
}

/** What a shared dose is called. */
export const mixName = (by: SharedDoseAnswer['by']) => (by === 'stock' ? 'stock' : 'dry mix')

/** A relative uncertainty as a percentage. */
export const shareText = (share: number) => `${decimalText(share * 100, share < 0.01 ? 2 : 1)} %`

const nameOf = (plan: Pick<Plan, 'formula'>, ingredientId: string) =>
  plan.formula.ingredients.find(({ id }) => id === ingredientId)?.name ?? 'An ingredient'
