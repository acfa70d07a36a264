import { formulaViews } from '@/core/formula/formula-views.ts'
import type { KitchenThing, Scale } from '@/core/kitchen/kitchen-record.ts'
import { pickScale } from '@/core/kitchen/pick-scale.ts'
import { thingsOfKind } from '@/core/kitchen/things-of-kind.ts'
import { roundToStep } from '@/core/units/round-to-step.ts'
import { formulaAtLevel } from './formula-at-level.ts'
import { readsFromWeights } from './level-ratio.ts'
import type { PlanProblem } from './plan-problem.ts'
import type { Plan } from './plan-record.ts'

/**
 * Levels whose every weight comes out the same once rounded to the plan's scales (or the whole kitchen's when the plan
 * names none): on the bench they are one and the same dough. An ingredient shared as a stock or dry mix is not weighed
 * singly, so it is passed over.
 */
export function collidingLevels(plan: Plan, kitchen: readonly KitchenThing[]): PlanProblem[] {
  const named = thingsOfKind(kitchen, 'scale', plan.kitchenIds)
  const scales = named.length > 0 ? named : thingsOfKind(kitchen, 'scale')
  const { acts } = plan.factor
  const shared =
    'ingredientId' in acts &&
    plan.sharedDoses.some((dose) => dose.ingredientId === acts.ingredientId)
  if (scales.length === 0 || shared || !readsFromWeights(acts)) return []
  const weights = plan.levels.map((level) => {
    const at = formulaAtLevel(plan, level)
    return at.ok ? weighed(at.formula, scales) : null
  })
  return weights.flatMap((own, index): PlanProblem[] => {
    const otherIndex = weights.findIndex((other) => sameWeights(own, other))
    const other = plan.levels[otherIndex]
    const named =
      'ingredientId' in acts
        ? acts.ingredientId
        : acts.on === 'preferment-share'
          ? acts.prefermentId
          : ''
    const moved = own?.find(({ id }) => id === named)
    if (
      !own ||
      !other ||
      otherIndex >= index ||
      other.value === plan.levels[index]?.value ||
      !moved
    )
      return []
    const { name, grams, resolutionGrams } = moved
    const clash = {
      otherIndex,
      otherLabel: other.label,
      ingredientName: name,
      grams,
      resolutionGrams,
    }
    return [
      {
        path: `/levels/${index}/value`,
        severity: 'stop',
        reason: 'levels-collide-on-scale',
        ...clash,
      },
    ]
  })
}

interface Weighed {
  id: string
  name: string
  grams: number
  resolutionGrams: number
}

function weighed(formula: Plan['formula'], scales: readonly Scale[]): Weighed[] {
  const views = formulaViews(formula)
  const final = views.finalDough.rows.map(({ ingredientId: id, name, grams }) => ({
    id,
    name,
    grams,
  }))
  const ahead = views.finalDough.preferments.map(({ prefermentId: id, name, grams }) => ({
    id,
    name,
    grams,
  }))
  return [...final, ...ahead].map(({ id, name, grams }) => {
    const picked = pickScale(grams, scales)
    const resolutionGrams = picked.ok ? picked.scale.resolutionGrams : 0
    return {
      id,
      name,
      grams: picked.ok ? roundToStep(grams, resolutionGrams) : grams,
      resolutionGrams,
    }
  })
}

function sameWeights(one: Weighed[] | null, other: Weighed[] | null): boolean {
  if (!one || !other) return false
  return one.every(({ grams }, index) => grams === other[index]?.grams)
}
