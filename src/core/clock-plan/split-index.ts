import type { Plan } from '@/core/trial/plan-record.ts'
import type { StepKind } from '@/core/trial/step.ts'

const firstKinds: Record<'divide' | 'proof' | 'oven', StepKind[]> = {
  divide: ['divide'],
  proof: ['proof', 'cold-proof'],
  oven: ['bake'],
}

/**
 * The place in the method's steps (from 0) where the levels' lines run apart: the step the factor moves, else the first of
 * the kind it splits at; a proof is looked for after the dividing first. The number of steps when the method has no such step.
 */
export function splitIndex(plan: Pick<Plan, 'factor' | 'steps'>): number {
  const { acts, splitsAt } = plan.factor
  if (splitsAt === 'mix') return 0
  if ('stepId' in acts) {
    const own = plan.steps.findIndex((step) => step.id === acts.stepId)
    if (own >= 0) return own
  }
  const kinds = firstKinds[splitsAt]
  const divided = plan.steps.findIndex((step) => step.kind === 'divide')
  const after = plan.steps.findIndex((step, at) => at > divided && kinds.includes(step.kind))
  const anywhere = plan.steps.findIndex((step) => kinds.includes(step.kind))
  const found = splitsAt === 'divide' || after < 0 ? anywhere : after
  return found < 0 ? plan.steps.length : found
}
