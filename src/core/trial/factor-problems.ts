import type { IngredientKind } from '@/core/formula/formula-record.ts'
import type { ActsOn } from './factor.ts'
import { readsFromWeights } from './level-ratio.ts'
import type { PlanProblem } from './plan-problem.ts'
import type { Plan } from './plan-record.ts'

const wantedKind: Partial<Record<ActsOn['on'], IngredientKind>> = {
  hydration: 'water',
  salt: 'salt',
  yeast: 'yeast',
  'flour-share': 'flour',
}

/** What is wrong with the factor: no name, names something that is not there or of another kind, splits too late. */
export function factorProblems(plan: Plan): PlanProblem[] {
  const { factor } = plan
  const found: PlanProblem[] = []
  if (factor.name.trim() === '') {
    found.push({ path: '/factor/name', severity: 'stop', reason: 'nameless-factor' })
  }
  found.push(...namedProblems(plan))
  const actsAtMix = readsFromWeights(factor.acts)
  const shared = plan.doughs === 'one'
  if (shared && (factor.splitsAt === 'mix' || actsAtMix)) {
    found.push({ path: '/doughs', severity: 'stop', reason: 'one-dough-cannot-serve' })
  }
  for (const [index, { ingredientId }] of plan.sharedDoses.entries()) {
    if (plan.formula.ingredients.some(({ id }) => id === ingredientId)) continue
    const path = `/sharedDoses/${index}/ingredientId`
    found.push({ path, severity: 'stop', reason: 'shared-dose-names-nothing', id: ingredientId })
  }
  return found
}

function namedProblems({ factor, formula, steps }: Plan): PlanProblem[] {
  const { acts } = factor
  if ('stepId' in acts) {
    if (steps.some(({ id }) => id === acts.stepId)) return []
    const named = {
      reason: 'factor-names-nothing' as const,
      id: acts.stepId,
      what: 'step' as const,
    }
    return [{ path: '/factor/acts/stepId', severity: 'stop', ...named }]
  }
  if (acts.on === 'preferment-share') {
    if (formula.preferments.some(({ id }) => id === acts.prefermentId)) return []
    const named = { reason: 'factor-names-nothing' as const, what: 'preferment' as const }
    const path = '/factor/acts/prefermentId'
    return [{ path, severity: 'stop', ...named, id: acts.prefermentId }]
  }
  if (!('ingredientId' in acts)) return []
  const found = ingredientProblems(formula, acts, 'ingredientId', acts.ingredientId)
  if (acts.on !== 'flour-share') return found
  if (acts.ingredientId === acts.fromIngredientId) {
    const path = '/factor/acts/fromIngredientId'
    return [...found, { path, severity: 'stop', reason: 'flour-from-itself' }]
  }
  return [...found, ...ingredientProblems(formula, acts, 'fromIngredientId', acts.fromIngredientId)]
}

function ingredientProblems(
  formula: Plan['formula'],
  acts: ActsOn,
  field: 'ingredientId' | 'fromIngredientId',
  id: string,
): PlanProblem[] {
  const path = `/factor/acts/${field}`
  const one = formula.ingredients.find((ingredient) => ingredient.id === id)
  if (!one)
    return [{ path, severity: 'stop', reason: 'factor-names-nothing', id, what: 'ingredient' }]
  const wanted = wantedKind[acts.on]
  if (!wanted || one.kind === wanted) return []
  const reason = 'factor-names-wrong-kind'
  return [{ path, severity: 'stop', reason, name: one.name, wanted, found: one.kind }]
}
