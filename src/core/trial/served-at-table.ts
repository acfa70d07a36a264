import type { PlanProblem } from './plan-problem.ts'
import type { Plan } from './plan-record.ts'

/** The levels served twice, in the order of the plan's levels. Hot servings are never: their flights repeat them. */
export function levelsServedAgain(plan: Pick<Plan, 'atTable' | 'levels' | 'serving'>): string[] {
  const again = plan.serving === 'rested' ? (plan.atTable?.again ?? []) : []
  return plan.levels.flatMap(({ id }) => (again.includes(id) ? [id] : []))
}

/** True when every level is served twice, the second time after all of the first. */
export function inTwoGoes(plan: Pick<Plan, 'atTable' | 'levels' | 'serving'>): boolean {
  return plan.levels.length > 0 && levelsServedAgain(plan).length === plan.levels.length
}

/** What is wrong with how servings are offered: a level served again that is gone, or hot servings served again. */
export function atTableProblems(plan: Plan): PlanProblem[] {
  const again = plan.atTable?.again ?? []
  const found = again.flatMap((id, index): PlanProblem[] =>
    plan.levels.some((level) => level.id === id)
      ? []
      : [
          {
            path: `/atTable/again/${index}`,
            severity: 'stop',
            reason: 'again-level-missing',
            id,
          },
        ],
  )
  if (again.length > 0 && plan.serving === 'as-baked')
    found.push({ path: '/atTable/again', severity: 'ask', reason: 'again-while-hot' })
  if (plan.atTable?.asksUsual && !plan.levels.some(({ control }) => control))
    found.push({ path: '/atTable/asksUsual', severity: 'ask', reason: 'no-usual-to-guess' })
  return found
}
