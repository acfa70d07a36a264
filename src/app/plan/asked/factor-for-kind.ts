import { asPutIn, withoutPutIn } from '@/app/plan/edits/put-in.ts'
import { usualLevels } from '@/app/plan/levels/usual-levels.ts'
import { withStepOfKind } from '@/app/plan/method/with-step.ts'
import type { Ingredient, IngredientKind, Preferment } from '@/core/formula/formula-record.ts'
import type { ActsOn, FactorKind } from '@/core/trial/factor.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { StepKind } from '@/core/trial/step.ts'
import { withBatchFor } from '@/core/trial/with-doughs.ts'
import { factsOfKind } from './factor-kinds.ts'
import { questionOfKind } from './usual-question.ts'

const usualNames: Record<IngredientKind, { name: string; percent: number }> = {
  flour: { name: 'Wheat flour', percent: 0 },
  water: { name: 'Water', percent: 65 },
  liquid: { name: 'Milk', percent: 10 },
  salt: { name: 'Salt', percent: 2 },
  yeast: { name: 'Instant yeast', percent: 0.3 },
  fat: { name: 'Olive oil', percent: 3 },
  other: { name: 'Malt', percent: 0.5 },
}

/** A new ingredient of a kind with a usual amount, to be changed. */
export function usualIngredient(kind: IngredientKind, id: string): Ingredient {
  const yeast = kind === 'yeast' ? { yeastForm: 'instant' as const } : {}
  const liquid = kind === 'liquid' ? { waterPercent: 88 } : {}
  return { id, kind, ...usualNames[kind], ...yeast, ...liquid }
}

/**
 * A poolish of equal flour and water with a thousandth of its flour in yeast (published examples: 0.06 to 0.1 %), fermenting
 * ahead with a fifth of the flour.
 */
export function usualPreferment(ingredients: readonly Ingredient[], id: string): Preferment {
  const flour = ingredients.find((each) => each.kind === 'flour')
  const water = ingredients.find((each) => each.kind === 'water')
  const yeast = ingredients.find((each) => each.kind === 'yeast' && each.percent >= 0.1)
  const part = (each: Ingredient | undefined, percent: number) =>
    each ? [{ ingredientId: each.id, percent }] : []
  const parts = [...part(flour, 100), ...part(water, 100), ...part(yeast, 0.1)]
  return { id, name: 'Poolish', kind: 'poolish', flourSharePercent: 20, parts }
}

/**
 * The plan with its factor turned to another kind: its usual name, unit and splitting point, moving the first thing of
 * the plan that fits. What the kind needs and the plan has not (a salt, a poolish, a proof step) is added. The levels
 * are new ones around what the plan has now, since the numbers of one kind mean nothing to another. What the kind before
 * added, untouched, goes with it.
 */
export function withFactorKind(plan: Plan, kind: FactorKind, newId: () => string): Plan {
  if (kind === plan.factor.acts.on) return plan
  const facts = factsOfKind(kind)
  const ready = withTarget(withoutPutIn(plan), kind, newId)
  const { name, unitOfMeasure, splitsAt } = facts
  const acts = actsOf(ready, kind)
  const turned: Plan = {
    ...ready,
    question: questionOfKind(ready.question, kind),
    factor: { name, unitOfMeasure, splitsAt: plan.factor.splitsAt, held: plan.factor.held, acts },
  }
  const levels = usualLevels(turned, newId)
  const doughs = splitsAt === 'mix' ? 'apart' : 'one'
  return withBatchFor(plan, { ...turned, factor: { ...turned.factor, splitsAt }, doughs, levels })
}

/**
 * The plan with its factor set on something that is there: as it is when what it names still stands, else on the first
 * ingredient, preferment or step that fits, added when there is none.
 */
export function withFactorTarget(plan: Plan, newId: () => string): Plan {
  if (targetStands(plan)) return plan
  const ready = withTarget(plan, plan.factor.acts.on, newId)
  return { ...ready, factor: { ...ready.factor, acts: actsOf(ready, ready.factor.acts.on) } }
}

function targetStands({ factor, formula, steps }: Plan): boolean {
  const { acts } = factor
  const has = (things: readonly { id: string }[], id: string) => things.some((one) => one.id === id)
  if ('fromIngredientId' in acts && !has(formula.ingredients, acts.fromIngredientId)) return false
  if ('ingredientId' in acts) return has(formula.ingredients, acts.ingredientId)
  if ('prefermentId' in acts) return has(formula.preferments, acts.prefermentId)
  return 'stepId' in acts ? has(steps, acts.stepId) : true
}

function withTarget(plan: Plan, kind: FactorKind, newId: () => string): Plan {
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
  if (flours.length >= count) return plan
  const flour = usualIngredient('flour', newId())
  return added(
    plan,
    flours.length === 0 ? { ...flour, percent: 100 } : { ...flour, name: 'Other flour' },
  )
}

function withPreferment(plan: Plan, newId: () => string): Plan {
  if (plan.formula.preferments.length > 0) return plan
  const preferments = [asPutIn(usualPreferment(plan.formula.ingredients, newId()))]
  return { ...plan, formula: { ...plan.formula, preferments } }
}

function withStep(plan: Plan, kinds: readonly StepKind[], newId: () => string): Plan {
  const [first] = kinds
  if (!first || plan.steps.some((step) => kinds.includes(step.kind))) return plan
  const ready = withStepOfKind(plan, first, newId())
  for (const step of ready.steps) if (!plan.steps.includes(step)) asPutIn(step)
  return ready
}

function added(plan: Plan, ingredient: Ingredient): Plan {
  const ingredients = [...plan.formula.ingredients, asPutIn(ingredient)]
  return { ...plan, formula: { ...plan.formula, ingredients } }
}

function actsOf(plan: Plan, kind: FactorKind): ActsOn {
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
