import { formulaViews } from '@/core/formula/formula-views.ts'
import type { KitchenThing, Scale } from '@/core/kitchen/kitchen-record.ts'
import { pickScale } from '@/core/kitchen/pick-scale.ts'
import { thingsOfKind } from '@/core/kitchen/things-of-kind.ts'
import { roundToStep } from '@/core/units/round-to-step.ts'
import { formulaAtLevel } from './formula-at-level.ts'
import type { PlanProblem } from './plan-problem.ts'
import type { Plan } from './plan-record.ts'

/**
 * Levels whose every weight comes out the same once rounded to the plan's scales (or the whole kitchen's when the plan
 * names none): on the bench they are one and the same dough. An ingredient shared as a stock or dry mix is not weighed
 * singly, so it is passed over.
 */
export function collidingLevels(plan: Plan, kitchen: readonly KitchenThing[]): PlanProblem[] {
  const chosen = thingsOfKind(kitchen, 'scale', plan.kitchenIds)
  const scales = chosen.length > 0 ? chosen : thingsOfKind(kitchen, 'scale')
  const { acts } = plan.factor
  const named =
    'ingredientId' in acts ? acts.ingredientId : 'prefermentId' in acts ? acts.prefermentId : null
  const shared = plan.sharedDoses.some(({ ingredientId }) => ingredientId === named)
  if (scales.length === 0 || shared || named === null) return []
  const doughs = plan.levels.map((level) => {
    const at = formulaAtLevel(plan, level)
    return at.ok ? doughOf(at.formula, named, scales) : null
  })
  return doughs.flatMap((own, index): PlanProblem[] => {
    const earlier = doughs.slice(0, index)
    const otherIndex = earlier.findIndex((other) => sameOnScales(own, other, scales))
    const other = plan.levels[otherIndex]
    if (!own?.moved || !other) return []
    if (other.value === plan.levels[index]?.value) return []
    const { name, grams, resolutionGrams } = own.moved
    return [
      {
        path: `/levels/${index}/value`,
        severity: 'stop',
        reason: 'levels-collide-on-scale',
        ...{ label: plan.levels[index]?.label ?? '', otherIndex, otherLabel: other.label },
        ...{ ingredientName: name, grams, resolutionGrams },
      },
    ]
  })
}

interface Weighed {
  name: string
  grams: number
  /** 0 where no scale holds so much. */
  resolutionGrams: number
}

interface Dough {
  /** Unrounded, in the same order for every level. */
  grams: number[]
  /** What the factor moves, as it is weighed. */
  moved: Weighed | null
}

function doughOf(formula: Plan['formula'], named: string, scales: readonly Scale[]): Dough {
  const { rows, preferments } = formulaViews(formula).finalDough
  const moved =
    rows.find(({ ingredientId }) => ingredientId === named) ??
    preferments.find(({ prefermentId }) => prefermentId === named)
  return {
    grams: [...rows, ...preferments].map(({ grams }) => grams),
    moved: moved ? { name: moved.name, ...weighed(moved.grams, scales) } : null,
  }
}

function weighed(grams: number, scales: readonly Scale[]): Omit<Weighed, 'name'> {
  const picked = pickScale(grams, scales)
  if (!picked.ok) return { grams, resolutionGrams: 0 }
  const { resolutionGrams } = picked.scale
  return { grams: roundToStep(grams, resolutionGrams), resolutionGrams }
}

/** What the factor moves is compared first: where it differs, as it mostly does, nothing else need be rounded. */
function sameOnScales(one: Dough | null, other: Dough | null, scales: readonly Scale[]): boolean {
  if (!one?.moved || !other || one.moved.grams !== other.moved?.grams) return false
  const shown = (grams: number | undefined) =>
    grams === undefined ? null : weighed(grams, scales).grams
  return one.grams.every((grams, index) => shown(grams) === shown(other.grams[index]))
}
