import type { Formula } from '@/core/formula/formula-record.ts'
import type { FactorKind } from '@/core/trial/factor.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { withFormula } from './replace-formula.ts'

/** What the factor of a plan adds to another formula, because the formula lacks what the factor moves. */
export interface AddedForFactor {
  factor: FactorKind
  /** The names of what is added: "Water". */
  names: readonly string[]
  /** The levels it is then moved through, in percent of flour. */
  levels: readonly number[]
  /** Whether a pasted line can give it; a preferment is none. */
  byLine: boolean
  /** Liquids of the formula, which the factor does not move. */
  liquids: readonly string[]
}

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
    factor: kind,
    names: added.map(({ name }) => name),
    levels: next.levels.flatMap(({ value }) => (value === null ? [] : [value])),
    byLine: kind !== 'preferment-share',
    liquids:
      kind === 'hydration'
        ? formula.ingredients.filter((each) => each.kind === 'liquid').map(({ name }) => name)
        : [],
  }
}
