import type { Formula, Ingredient, Preferment } from '@/core/formula/formula-record.ts'
import { most } from '@/core/record/most.ts'
import type { Factor } from '@/core/trial/factor.ts'
import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Response } from '@/core/trial/response.ts'
import type { Step } from '@/core/trial/step.ts'

/** A list with one of its things changed; the others stay the same objects, so that their rows need no new drawing. */
export function edited<Thing extends { id: string }>(
  things: readonly Thing[],
  id: string,
  edit: (thing: Thing) => Thing,
): Thing[] {
  return things.map((each) => (each.id === id ? edit(each) : each))
}

/** A list with one of its things a place further up (−1) or down (+1); at its end nothing moves. */
export function moved<Thing extends { id: string }>(
  things: readonly Thing[],
  id: string,
  by: -1 | 1,
): Thing[] {
  const from = things.findIndex((each) => each.id === id)
  const thing = things[from]
  const to = from + by
  if (!thing || to < 0 || to >= things.length) return [...things]
  const others = things.filter((each) => each.id !== id)
  return [...others.slice(0, to), thing, ...others.slice(to)]
}

/** The plan with its formula changed. */
export const inFormula = (plan: Plan, edit: (formula: Formula) => Formula): Plan => ({
  ...plan,
  formula: edit(plan.formula),
})

/** The plan with one ingredient changed. */
export const inIngredient = (plan: Plan, id: string, edit: (one: Ingredient) => Ingredient): Plan =>
  inFormula(plan, (formula) => ({
    ...formula,
    ingredients: edited(formula.ingredients, id, edit),
  }))

/** The plan with one preferment changed. */
export const inPreferment = (plan: Plan, id: string, edit: (one: Preferment) => Preferment): Plan =>
  inFormula(plan, (formula) => ({
    ...formula,
    preferments: edited(formula.preferments, id, edit),
  }))

/** The plan with one level changed. */
export const inLevel = (plan: Plan, id: string, edit: (level: Level) => Level): Plan => ({
  ...plan,
  levels: edited(plan.levels, id, edit),
})

/** The plan with one step changed. */
export const inStep = (plan: Plan, id: string, edit: (step: Step) => Step): Plan => ({
  ...plan,
  steps: edited(plan.steps, id, edit),
})

/** The plan with one response changed. */
export const inResponse = (plan: Plan, id: string, edit: (one: Response) => Response): Plan => ({
  ...plan,
  responses: edited(plan.responses, id, edit),
})

/** The plan with its factor changed in name, unit, what it moves or what is held. Its kind turns by `withFactorKind`. */
export function inFactor(plan: Plan, next: Partial<Factor>): Plan {
  return { ...plan, factor: { ...plan.factor, ...next } }
}

/** The plan with a difference that the baker knows of and goes on with. */
export function accepting(plan: Plan, key: string): Plan {
  return { ...plan, accepted: [...new Set([...plan.accepted, key])] }
}

/** The plan made so many times; past the most, as it is. */
export function withSessions(plan: Plan, plannedSessions: number): Plan {
  return plannedSessions > most.plannedSessions ? plan : { ...plan, plannedSessions }
}
