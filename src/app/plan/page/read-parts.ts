import { type Plan, planShape } from '@/core/trial/plan-record.ts'

const stamps: readonly string[] = ['id', 'trialId', 'revision', 'at', 'zone']

/** The parts of a plan that a judgement rests on: all but its name and its stamps, which change at every keeping. */
export const judgedParts = (Object.keys(planShape.shape) as (keyof Plan)[]).filter(
  (part) => !stamps.includes(part),
)

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
