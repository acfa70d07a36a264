import { withFormula } from '@/app/plan/formula/replace-formula.ts'
import type { Formula } from '@/core/formula/formula-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { AddedForFactor } from '@/core/wording/plan/formula-lacks-text.ts'
import { factsOfKind } from './factor-kinds.ts'

/**
 * What the plan's factor would add to another formula that lacks what it moves, such as water for hydration to a milk
 * dough; null when it lacks nothing.
 */
export function addedForFactor(plan: Plan, formula: Formula): AddedForFactor | null {
  let count = 0
  const next = withFormula(plan, formula, () => `added${++count}`)
  const added = [
    ...next.formula.ingredients.slice(formula.ingredients.length),
    ...next.formula.preferments.slice(formula.preferments.length),
  ]
  if (added.length === 0) return null
  const kind = plan.factor.acts.on
  return {
    factor: factsOfKind(kind).label,
    names: added.map(({ name }) => name),
    levels: next.levels.flatMap(({ value }) => (value === null ? [] : [value])),
    byLine: kind !== 'preferment-share',
    liquids:
      kind === 'hydration'
        ? formula.ingredients.filter((each) => each.kind === 'liquid').map(({ name }) => name)
        : [],
    movesLiquids: factsOfKind('ingredient').label,
  }
}
