import type * as z from 'zod/mini'
import type { Content } from '@/trial-file/migration.ts'
import type { planShape } from './version-1-plan.ts'

type Plan = z.infer<typeof planShape>

/** Version 1 gave a step one tolerance for both ways; since then it says how early and how late its wait may end. */
export function toleranceEitherWay(old: Content): Content {
  const { plans } = old as { plans: readonly Plan[] }
  return {
    ...old,
    plans: plans.map((plan) => ({
      ...plan,
      steps: plan.steps.map(({ toleranceSeconds, ...step }) => ({
        ...step,
        earlySeconds: toleranceSeconds,
        lateSeconds: toleranceSeconds,
      })),
    })),
  }
}
