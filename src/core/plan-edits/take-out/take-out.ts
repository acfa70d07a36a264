import { forgettingPutIn } from '@/core/plan-edits/factor/put-in.ts'
import { withChanges } from '@/core/plan-edits/levels/changes.ts'
import { namingWhatStands } from '@/core/plan-edits/parts/what-stands.ts'
import { withWrittenFirst } from '@/core/plan-edits/start/with-written-first.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/**
 * Takes one ingredient out of the whole plan: the formula, every preferment's parts, shared doses and the changes of a
 * choice's options. Putting it back restores all of them where they stood. The ingredient the factor moves stays: null.
 */
export function takeOutIngredient(plan: Plan, id: string): TakenOut | null {
  const { formula, sharedDoses, factor, levels } = plan
  const index = formula.ingredients.findIndex((each) => each.id === id)
  const ingredient = formula.ingredients[index]
  const acts = factor.acts
  const moved =
    ('ingredientId' in acts && acts.ingredientId === id) ||
    ('fromIngredientId' in acts && acts.fromIngredientId === id)
  if (!ingredient || moved) return null
  const parts = new Map(formula.preferments.map((each) => [each.id, each.parts]))
  const changes = new Map(levels.map((level) => [level.id, level.changes]))
  return {
    id,
    what: ingredient.name,
    plan: {
      ...forgettingPutIn(plan, id),
      formula: {
        ...formula,
        ingredients: formula.ingredients.filter((each) => each.id !== id),
        preferments: formula.preferments.map((each) => ({
          ...each,
          parts: each.parts.filter((part) => part.ingredientId !== id),
        })),
      },
      sharedDoses: sharedDoses.filter((dose) => dose.ingredientId !== id),
      levels: levels.map((level) =>
        withChanges(
          level,
          level.changes?.filter((each) => each.what !== 'ingredient' || each.ingredientId !== id),
        ),
      ),
    },
    restore: (now) => ({
      ...now,
      formula: {
        ...now.formula,
        ingredients: putBack(now.formula.ingredients, index, ingredient),
        preferments: now.formula.preferments.map((each) => ({
          ...each,
          parts: [
            ...each.parts,
            ...(parts.get(each.id) ?? []).filter((part) => part.ingredientId === id),
          ],
        })),
      },
      sharedDoses: [...now.sharedDoses, ...sharedDoses.filter((dose) => dose.ingredientId === id)],
      levels: now.levels.map((level) => withChanges(level, changes.get(level.id) ?? level.changes)),
    }),
  }
}

/** Takes a preferment out; its flour and water stay in the dough. The one the factor moves stays: null. */
export function takeOutPreferment(plan: Plan, id: string): TakenOut | null {
  const { acts } = plan.factor
  if ('prefermentId' in acts && acts.prefermentId === id) return null
  return takeOutOf(plan.formula.preferments, id, (preferments) => (now) => ({
    ...now,
    formula: { ...now.formula, preferments: preferments(now.formula.preferments) },
  }))(plan)
}

/** Takes a step out of the method and of the options that name it. The one the factor moves stays: null. */
export function takeOutStep(plan: Plan, id: string): TakenOut | null {
  const { acts } = plan.factor
  if ('stepId' in acts && acts.stepId === id) return null
  const changes = new Map(plan.levels.map((level) => [level.id, level.changes]))
  const taken = takeOutOf(plan.steps, id, (steps) => (now) => ({
    ...now,
    steps: steps(now.steps),
  }))(plan)
  if (!taken) return null
  return {
    ...taken,
    plan: {
      ...taken.plan,
      levels: plan.levels.map((level) =>
        withChanges(
          level,
          level.changes?.filter((each) => each.what !== 'step' || each.stepId !== id),
        ),
      ),
    },
    restore: (now) => {
      const restored = taken.restore(now)
      return {
        ...restored,
        levels: restored.levels.map((level) =>
          withChanges(level, changes.get(level.id) ?? level.changes),
        ),
      }
    },
  }
}

/**
 * Takes a level out, and with it a test of it and a hope for it; when it was the control, none is marked until the baker marks
 * another. Putting it back restores all of them.
 */
export function takeOutLevel(plan: Plan, id: string): TakenOut | null {
  const taken = takeOutOf(plan.levels, id, (levels) => (now) => ({
    ...now,
    levels: levels(now.levels),
  }))(plan)
  if (!taken) return null
  const tested = plan.tellApart?.levelIds.includes(id) ? plan.tellApart : null
  const hoped = plan.writtenFirst?.hopedLevelId === id
  return {
    ...taken,
    plan: namingWhatStands(taken.plan),
    restore: (now) => {
      const back = taken.restore(now)
      const retold = { ...back, tellApart: back.tellApart ?? tested }
      return hoped ? withWrittenFirst(retold, { hopedLevelId: id }) : retold
    },
  }
}

/** Takes a response out; when it was the main one, none is until the baker chooses another, and undo makes it so again. */
export function takeOutResponse(plan: Plan, id: string): TakenOut | null {
  const wasMain = plan.mainResponseId === id
  const taken = takeOutOf(plan.responses, id, (responses) => (now) => ({
    ...now,
    responses: responses(now.responses),
  }))(plan)
  if (!taken || !wasMain) return taken
  return {
    ...taken,
    plan: { ...taken.plan, mainResponseId: null },
    restore: (now) => ({ ...taken.restore(now), mainResponseId: now.mainResponseId ?? id }),
  }
}

type Edit<Thing> = (things: readonly Thing[]) => Thing[]

function takeOutOf<Thing extends { id: string }>(
  things: readonly Thing[],
  id: string,
  place: (edit: Edit<Thing>) => (plan: Plan) => Plan,
): (plan: Plan) => TakenOut | null {
  const index = things.findIndex((each) => each.id === id)
  const thing = things[index]
  if (!thing) return () => null
  return (plan) => ({
    id,
    what: nameOf(thing),
    plan: place((all) => all.filter((each) => each.id !== id))(forgettingPutIn(plan, id)),
    restore: place((all) => putBack(all, index, thing)),
  })
}

function nameOf(thing: object): string {
  if ('name' in thing) return String(thing.name)
  return 'label' in thing ? String(thing.label) : ''
}

function putBack<Thing extends { id: string }>(
  things: readonly Thing[],
  index: number,
  thing: Thing,
): Thing[] {
  if (things.some((each) => each.id === thing.id)) return [...things]
  return [...things.slice(0, index), thing, ...things.slice(index)]
}

/** Something taken out of a plan: the plan without it, and how to put it back into the plan as it stands by then. */
export interface TakenOut {
  id: string
  /** What it was called. */
  what: string
  plan: Plan
  restore: (plan: Plan) => Plan
}
