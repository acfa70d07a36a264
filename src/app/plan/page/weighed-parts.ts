import type { Plan } from '@/core/trial/plan-record.ts'

/** The parts of a plan that its weights follow from. */
export const weighedParts = [
  'formula',
  'factor',
  'levels',
  'doughs',
  'sharedDoses',
  'kitchenIds',
  'plannedSessions',
] as const satisfies readonly (keyof Plan)[]
