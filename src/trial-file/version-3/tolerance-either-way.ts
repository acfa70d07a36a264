import type { Content } from '@/trial-file/migration.ts'
import type { Version2Plan } from './version-2-file.ts'

/** Version 2 gave a step one tolerance for both ways; since then it says how early and how late its wait may end. */
export function toleranceEitherWay(old: Content): Content {
  const { plans } = old as { plans: readonly Version2Plan[] }
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
