import type { FormulaProblem } from '@/core/formula/formula-problem.ts'
import { formulaProblems } from '@/core/formula/formula-problems.ts'
import { formulaAtLevel } from './formula-at-level.ts'
import type { PlanProblem } from './plan-problem.ts'
import type { Plan } from './plan-record.ts'

/** Levels at which the formula cannot be made, or gets a problem it does not have by itself: placed at the level. */
export function levelFormulaProblems(plan: Plan): PlanProblem[] {
  const known = new Set(formulaProblems(plan.formula).map(keyOf))
  return plan.levels.flatMap((level, index): PlanProblem[] => {
    const field = plan.factor.acts.on === 'choice' ? 'changes' : 'value'
    const path = `/levels/${index}/${field}`
    const value = level.value
    if (field === 'value' && (value === null || !Number.isFinite(value))) return []
    const at = formulaAtLevel(plan, level)
    if (!at.ok) {
      if (at.reason === 'factor-names-nothing' && field === 'value') return []
      return [
        { path, severity: 'stop', reason: 'level-cannot-be-made', label: level.label, trouble: at },
      ]
    }
    return formulaProblems(at.formula)
      .filter((problem) => !known.has(keyOf(problem)))
      .map((problem) => atLevel(problem, path, level.label))
  })
}

function atLevel(problem: FormulaProblem, path: string, label: string): PlanProblem {
  const { path: _, severity, ...trouble } = problem
  if (trouble.reason === 'hydration-unusual') return { path, severity, ...trouble }
  return { path, severity, reason: 'level-breaks-formula', label, trouble }
}

function keyOf({ path, reason }: FormulaProblem): string {
  return `${path} ${reason}`
}
