import type { FormulaProblem } from './formula-problem.ts'
import type { Formula, Preferment } from './formula-record.ts'
import { prefermentedFlourPercent } from './hydration.ts'

/** What is wrong inside the preferments: parts that name no ingredient, flour parts off 100, shares past all the flour. */
export function prefermentProblems(formula: Formula): FormulaProblem[] {
  const each = formula.preferments.flatMap((one, index) => problemsOf(formula, one, index))
  const sumPercent = prefermentedFlourPercent(formula)
  if (sumPercent <= 100 + 1e-9) return each
  const last = formula.preferments.length - 1
  const path = `/preferments/${last}/flourSharePercent`
  return [...each, { path, severity: 'stop', reason: 'preferment-flour-past-all', sumPercent }]
}

function problemsOf(formula: Formula, preferment: Preferment, index: number): FormulaProblem[] {
  const path = `/preferments/${index}`
  const { id: prefermentId, parts } = preferment
  const kinds = new Map(formula.ingredients.map(({ id, kind }) => [id, kind]))
  const found: FormulaProblem[] = parts.flatMap(
    ({ ingredientId, percent }, part): FormulaProblem[] => {
      const at = `${path}/parts/${part}`
      if (!kinds.has(ingredientId)) {
        const reason = 'preferment-part-missing'
        return [
          {
            path: `${at}/ingredientId`,
            severity: 'stop',
            reason,
            prefermentId,
            ingredientId,
          },
        ]
      }
      if (!Number.isFinite(percent)) {
        return [
          {
            path: `${at}/percent`,
            severity: 'stop',
            reason: 'not-a-number',
            ingredientId,
          },
        ]
      }
      return []
    },
  )
  const flours = parts.filter(({ ingredientId }) => kinds.get(ingredientId) === 'flour')
  const sumPercent = flours.reduce((sum, { percent }) => sum + percent, 0)
  if (flours.length === 0) {
    found.push({
      path: `${path}/parts`,
      severity: 'stop',
      reason: 'preferment-without-flour',
      prefermentId,
    })
  } else if (Math.abs(sumPercent - 100) > 1e-6) {
    const reason = 'preferment-flour-does-not-sum'
    found.push({ path: `${path}/parts`, severity: 'stop', reason, prefermentId, sumPercent })
  }
  return found
}
