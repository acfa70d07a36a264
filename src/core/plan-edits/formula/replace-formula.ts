import type { Formula, Ingredient } from '@/core/formula/formula-record.ts'
import { withFactorTarget } from '@/core/plan-edits/factor/factor-target.ts'
import { namingPutIn } from '@/core/plan-edits/factor/put-in.ts'
import { withChanges } from '@/core/plan-edits/levels/changes.ts'
import { usualLevels } from '@/core/plan-edits/levels/usual-levels.ts'
import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/**
 * The plan with another formula (pasted, or from an earlier trial). An ingredient of the same kind and name keeps the id
 * it had in the plan, so that the factor, shared doses and options that name it still do; what named something that is
 * gone is dropped, and the factor is set on the first ingredient or preferment that fits. Levels that nobody has changed
 * move to where they stand around the new formula.
 */
export function withFormula(plan: Plan, formula: Formula, newId: () => string): Plan {
  const known = oneByOne(plan.formula.ingredients)
  const ids = new Map(
    formula.ingredients.map((each) => [each.id, known(each, sameIngredient)?.id ?? newId()]),
  )
  const idOf = (id: string) => ids.get(id) ?? id
  const ingredients = formula.ingredients.map((each) => withoutLot({ ...each, id: idOf(each.id) }))
  const knownAhead = oneByOne(plan.formula.preferments)
  const preferments = formula.preferments.map((each) => ({
    ...each,
    id: knownAhead(each, (one, other) => one.name === other.name)?.id ?? newId(),
    parts: each.parts.map((part) => ({ ...part, ingredientId: idOf(part.ingredientId) })),
  }))
  const kept = new Set(ingredients.map(({ id }) => id))
  const replaced = {
    ...plan,
    formula: { ...formula, ingredients, preferments },
    sharedDoses: plan.sharedDoses.filter((dose) => kept.has(dose.ingredientId)),
    levels: plan.levels.map((level) => withKnownChanges(level, kept)),
  }
  const stillPutIn = plan.putIn?.filter((id) => plan.steps.some((step) => step.id === id)) ?? []
  const ready = withFactorTarget(namingPutIn(replaced, stillPutIn), newId)
  return areUsual(plan) ? withUsualLevels(ready) : ready
}

const sameIds = () => ''

/** True while the levels are those that stand around the formula by themselves: nobody has typed one. */
function areUsual(plan: Plan): boolean {
  const valuesOf = (levels: readonly Level[]) => JSON.stringify(levels.map(({ value }) => value))
  return (
    plan.levels.some(({ value }) => value !== null) &&
    valuesOf(plan.levels) === valuesOf(usualLevels(plan, sameIds))
  )
}

function withUsualLevels(plan: Plan): Plan {
  const usual = usualLevels(plan, sameIds)
  const levels = plan.levels.map((level, at) => ({ ...level, ...usual[at], id: level.id }))
  return { ...plan, levels }
}

/** Finds what is the same among things, each of them once: two of one name stay two. */
function oneByOne<Thing>(things: readonly Thing[]) {
  const left = new Set(things)
  return (wanted: Thing, same: (one: Thing, other: Thing) => boolean): Thing | undefined => {
    const found = [...left].find((each) => same(each, wanted))
    if (found !== undefined) left.delete(found)
    return found
  }
}

const sameIngredient = (one: Ingredient, other: Ingredient) =>
  one.kind === other.kind && one.name.toLowerCase() === other.name.toLowerCase()

function withoutLot({ flourLotId: _, ...ingredient }: Ingredient): Ingredient {
  return ingredient
}

function withKnownChanges(level: Level, kept: ReadonlySet<string>): Level {
  return withChanges(
    level,
    level.changes?.filter((each) => each.what !== 'ingredient' || kept.has(each.ingredientId)),
  )
}
