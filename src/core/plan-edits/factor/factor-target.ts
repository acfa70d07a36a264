import type { Ingredient, IngredientKind } from '@/core/formula/formula-record.ts'
import {
  flourBeside,
  usualIngredient,
  usualPreferment,
} from '@/core/plan-edits/formula/usual-ingredient.ts'
import { withStepOfKind } from '@/core/plan-edits/method/with-step.ts'
import type { ActsOn, FactorKind } from '@/core/trial/factor.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { StepKind } from '@/core/trial/step.ts'
import { factsOfKind } from './factor-kinds.ts'
import { namingPutIn } from './put-in.ts'

/**
 * The plan with its factor set on something that is there: as it is when what it names still stands, else on the first
 * ingredient, preferment or step that fits, put in when there is none.
 */
export function withFactorTarget(plan: Plan, newId: () => string): Plan {
  if (targetStands(plan)) return plan
  const { on } = plan.factor.acts
  const ready = withTarget(plan, on, newId)
  return { ...ready, factor: { ...ready.factor, acts: actsOfKind(ready, on) } }
}

function targetStands({ factor, formula, steps }: Plan): boolean {
  const { acts } = factor
  const has = (things: readonly { id: string }[], id: string) => things.some((one) => one.id === id)
  if ('fromIngredientId' in acts && !has(formula.ingredients, acts.fromIngredientId)) return false
  if ('ingredientId' in acts) return has(formula.ingredients, acts.ingredientId)
  if ('prefermentId' in acts) return has(formula.preferments, acts.prefermentId)
  return 'stepId' in acts ? has(steps, acts.stepId) : true
}

/** The plan with what a kind of factor moves (a salt, a poolish, a proof step), put in and named as such where it lacks it. */
export function withTarget(plan: Plan, kind: FactorKind, newId: () => string): Plan {
  const { target } = factsOfKind(kind)
  if (target.names === 'ingredient') return withIngredient(plan, target.kinds, newId)
  if (target.names === 'step') return withStep(plan, target.kinds, newId)
  if (target.names === 'preferment') return withPreferment(plan, newId)
  if (target.names === 'two-flours') return withFlours(withFlours(plan, 1, newId), 2, newId)
  return plan
}

function withIngredient(plan: Plan, kinds: readonly IngredientKind[], newId: () => string): Plan {
  const [first] = kinds
  if (!first || plan.formula.ingredients.some((each) => kinds.includes(each.kind))) return plan
  return added(plan, usualIngredient(first, newId()))
}

function withFlours(plan: Plan, count: number, newId: () => string): Plan {
  const flours = plan.formula.ingredients.filter((each) => each.kind === 'flour')
  return flours.length >= count ? plan : added(plan, flourBeside(flours, newId()))
}

function withPreferment(plan: Plan, newId: () => string): Plan {
  const { formula } = plan
  if (formula.preferments.length > 0) return plan
  const preferment = usualPreferment(formula.ingredients, newId())
  return puttingIn({ ...plan, formula: { ...formula, preferments: [preferment] } }, preferment.id)
}

function withStep(plan: Plan, kinds: readonly StepKind[], newId: () => string): Plan {
  const [first] = kinds
  if (!first || plan.steps.some((step) => kinds.includes(step.kind))) return plan
  const id = newId()
  return puttingIn(withStepOfKind(plan, first, id), id)
}

function added(plan: Plan, ingredient: Ingredient): Plan {
  const ingredients = [...plan.formula.ingredients, ingredient]
  return puttingIn({ ...plan, formula: { ...plan.formula, ingredients } }, ingredient.id)
}

const puttingIn = (plan: Plan, id: string) => namingPutIn(plan, [...(plan.putIn ?? []), id])

/** What a factor of a kind acts on in a plan that has it: the first thing that fits. Throws in a plan that lacks it. */
export function actsOfKind(plan: Plan, kind: FactorKind): ActsOn {
  switch (kind) {
    case 'hydration':
    case 'salt':
    case 'yeast':
    case 'ingredient':
      return { on: kind, ingredientId: ingredientFor(plan, kind) }
    case 'preferment-share':
      return { on: kind, prefermentId: first(plan.formula.preferments) }
    case 'flour-share': {
      const flours = plan.formula.ingredients.filter((each) => each.kind === 'flour')
      return { on: kind, ingredientId: first(flours.slice(1)), fromIngredientId: first(flours) }
    }
    case 'piece-mass':
    case 'own':
    case 'choice':
      return { on: kind }
    default:
      return { on: kind, stepId: stepFor(plan, kind) }
  }
}

function ingredientFor(plan: Plan, kind: FactorKind): string {
  const { target } = factsOfKind(kind)
  const kinds = target.names === 'ingredient' ? target.kinds : []
  return first(plan.formula.ingredients.filter((each) => kinds.includes(each.kind)))
}

function stepFor(plan: Plan, kind: FactorKind): string {
  const { target } = factsOfKind(kind)
  const kinds = target.names === 'step' ? target.kinds : []
  return first(plan.steps.filter((step) => kinds.includes(step.kind)))
}

function first(things: readonly { id: string }[]): string {
  const [thing] = things
  if (!thing) throw new Error('the plan lacks what its factor moves')
  return thing.id
}
