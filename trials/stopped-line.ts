import type { Step } from '@/core/trial/step.ts'
import type { Line } from './bench-day.ts'

/** The line that ends a step. */
export const stoppedLine = (
  about: Line['say']['about'],
  at: number,
  step: Step,
  repeat: number,
): Line => ({
  at,
  say: { kind: 'step-stopped', about, at, stepId: step.id, repeat },
})
