import type { Formula } from '@/core/formula/formula-record.ts'
import { withFormula } from '@/core/plan-edits/formula/replace-formula.ts'
import type { Plan, TemperaturePlan } from '@/core/trial/plan-record.ts'
import type { Step } from '@/core/trial/step.ts'

interface Baked {
  formula: Formula
  steps: Step[]
  temperature: Omit<TemperaturePlan, 'matched'> | null
}

/** A starting plan around a dough that is baked already: its formula, its method and its temperatures, everything else as it was. */
export function planAround(
  plan: Plan,
  { formula, steps, temperature }: Baked,
  newId: () => string,
): Plan {
  const own = steps.map((step) => ({ ...step, id: newId() }))
  const method = own.length > 0 ? { ...plan, steps: own } : plan
  const warmed = temperature
    ? { ...method, temperature: { ...temperature, matched: true } }
    : method
  return withFormula(warmed, formula, newId)
}
