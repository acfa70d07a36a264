import type { Plan } from '@/core/trial/plan-record.ts'
import { type StepKind, stepKinds } from '@/core/trial/step.ts'
import { usualStep } from './step-presets.ts'

/** The method with a usual step of a kind at its usual place: before the first step whose kind comes later in the day. */
export function withStepOfKind(plan: Plan, kind: StepKind, id: string): Plan {
  const turn = stepKinds.indexOf(kind)
  const later = plan.steps.findIndex((step) => stepKinds.indexOf(step.kind) > turn)
  const at = later < 0 ? plan.steps.length : later
  const steps = [...plan.steps.slice(0, at), usualStep(kind, id), ...plan.steps.slice(at)]
  return { ...plan, steps }
}
