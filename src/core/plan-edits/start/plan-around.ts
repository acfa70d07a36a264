import type { Formula } from '@/core/formula/formula-record.ts'
import { usualQuestion } from '@/core/plan-edits/factor/usual-question.ts'
import { withFormula } from '@/core/plan-edits/formula/replace-formula.ts'
import type { Plan, TemperaturePlan } from '@/core/trial/plan-record.ts'
import type { Step } from '@/core/trial/step.ts'

interface Baked {
  /** As the question calls it; “bread” where left out, since another name may hold the level. */
  name?: string
  formula: Formula
  steps: readonly Omit<Step, 'id'>[]
  temperature: Omit<TemperaturePlan, 'matched'> | null
}

/** A starting plan around a dough that is baked already: its formula, its method and its temperatures, asked of it; everything else as it was. */
export function planAround(
  plan: Plan,
  { name = 'bread', formula, steps, temperature }: Baked,
  newId: () => string,
): Plan {
  const own = steps.map((step) => ({ ...step, id: newId() }))
  const asked = { ...plan, question: usualQuestion(plan.factor.acts.on, name) }
  const method = own.length > 0 ? { ...asked, steps: own } : asked
  const warmed = temperature
    ? { ...method, temperature: { ...temperature, matched: true } }
    : method
  return withFormula(warmed, formula, newId)
}
