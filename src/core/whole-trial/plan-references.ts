import type { Plan } from '@/core/trial/plan-record.ts'
import { idsOf, type References } from './references.ts'
import type { WholeTrial } from './whole-trial.ts'

/** What a plan names must be in it, or in the kitchen that travels with the trial. */
export function checkPlan(references: References, whole: WholeTrial, plan: Plan, at: string): void {
  const kitchen = idsOf(whole.kitchen)
  const tasters = idsOf(whole.kitchen.filter((thing) => thing.kind === 'taster'))
  const flours = idsOf(whole.kitchen.filter((thing) => thing.kind === 'flour'))
  const ingredients = idsOf(plan.formula.ingredients)
  const steps = idsOf(plan.steps)
  const levels = idsOf(plan.levels)

  references.same(`${at}/trialId`, plan.trialId, whole.trial.id)
  references.distinct(`${at}/levels`, plan.levels)
  references.distinct(`${at}/steps`, plan.steps)
  references.distinct(`${at}/responses`, plan.responses)
  references.distinct(`${at}/formula/ingredients`, plan.formula.ingredients)
  references.distinct(`${at}/formula/preferments`, plan.formula.preferments)

  checkFactor(references, plan, `${at}/factor/acts`)
  for (const [index, level] of plan.levels.entries())
    for (const [place, change] of (level.changes ?? []).entries()) {
      const here = `${at}/levels/${index}/changes/${place}`
      if (change.what === 'ingredient')
        references.known(`${here}/ingredientId`, change.ingredientId, ingredients)
      if (change.what === 'step') references.known(`${here}/stepId`, change.stepId, steps)
    }
  for (const [index, { flourLotId }] of plan.formula.ingredients.entries())
    references.known(`${at}/formula/ingredients/${index}/flourLotId`, flourLotId, flours)
  for (const [index, { parts }] of plan.formula.preferments.entries())
    for (const [place, part] of parts.entries())
      references.known(
        `${at}/formula/preferments/${index}/parts/${place}/ingredientId`,
        part.ingredientId,
        ingredients,
      )
  references.known(`${at}/mainResponseId`, plan.mainResponseId, idsOf(plan.responses))
  for (const [index, { tasterId }] of plan.tasters.entries())
    references.known(`${at}/tasters/${index}/tasterId`, tasterId, tasters)
  references.distinctBy(
    `${at}/tasters`,
    'tasterId',
    plan.tasters.map((taster) => taster.tasterId),
  )
  for (const [index, dose] of plan.sharedDoses.entries())
    references.known(`${at}/sharedDoses/${index}/ingredientId`, dose.ingredientId, ingredients)
  for (const [index, id] of (plan.tellApart?.levelIds ?? []).entries())
    references.known(`${at}/tellApart/levelIds/${index}`, id, levels)
  for (const [index, id] of (plan.atTable?.again ?? []).entries())
    references.known(`${at}/atTable/again/${index}`, id, levels)
  references.once(`${at}/atTable/again`, plan.atTable?.again ?? [])
  references.known(`${at}/writtenFirst/hopedLevelId`, plan.writtenFirst?.hopedLevelId, levels)
  references.distinctBy(
    `${at}/sharedDoses`,
    'ingredientId',
    plan.sharedDoses.map((dose) => dose.ingredientId),
  )
  references.once(`${at}/tellApart/levelIds`, plan.tellApart?.levelIds ?? [])
  references.once(`${at}/kitchenIds`, plan.kitchenIds)
  for (const [index, id] of plan.kitchenIds.entries())
    references.known(`${at}/kitchenIds/${index}`, id, kitchen)
}

function checkFactor(references: References, plan: Plan, at: string): void {
  const { acts } = plan.factor
  const ingredients = idsOf(plan.formula.ingredients)
  if ('ingredientId' in acts) references.known(`${at}/ingredientId`, acts.ingredientId, ingredients)
  if ('fromIngredientId' in acts)
    references.known(`${at}/fromIngredientId`, acts.fromIngredientId, ingredients)
  if ('prefermentId' in acts)
    references.known(`${at}/prefermentId`, acts.prefermentId, idsOf(plan.formula.preferments))
  if ('stepId' in acts) references.known(`${at}/stepId`, acts.stepId, idsOf(plan.steps))
}
