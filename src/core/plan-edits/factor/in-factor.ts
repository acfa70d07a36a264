import type { Factor } from '@/core/trial/factor.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/** The plan with its factor changed in name, unit, what it moves or what is held. Its kind turns by `withFactorKind`. */
export function inFactor(plan: Plan, next: Partial<Factor>): Plan {
  return { ...plan, factor: { ...plan.factor, ...next } }
}
