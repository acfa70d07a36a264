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

/** True when whoever tastes plates for themselves and loses track of the plates. Hot servings are never shuffled. */
export function onShuffledPlates(plan: Pick<Plan, 'atTable' | 'serving'>): boolean {
  return plan.serving === 'rested' && plan.atTable?.shuffledPlates === true
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
  if (plan.atTable?.cups && plan.tellApart)
    found.push({ path: '/atTable/cups', severity: 'stop', reason: 'cups-and-sets' })
  return [...found, ...plateProblems(plan)]
}

/** Plates that one person shuffles are for that person, of samples that rested; a reference among three cannot be shuffled. */
function plateProblems({ atTable, serving, tasters, tellApart }: Plan): PlanProblem[] {
  if (!atTable?.shuffledPlates) return []
  const path = '/atTable/shuffledPlates'
  if (serving === 'as-baked') return [{ path, severity: 'ask', reason: 'plates-while-hot' }]
  const found: PlanProblem[] = []
  if (tasters.length > 1) found.push({ path, severity: 'ask', reason: 'plates-of-several' })
  if (tellApart?.test === 'duo-trio')
    found.push({ path, severity: 'stop', reason: 'reference-on-plates' })
  return found
}
