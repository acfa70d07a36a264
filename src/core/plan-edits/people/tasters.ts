import type { Plan } from '@/core/trial/plan-record.ts'

export type Tastes = 'out' | 'blind' | 'knows'

/** The plan with a taster in it, blind or knowing which is which, or out of it. Who bakes stays marked. */
export function withTaster(plan: Plan, tasterId: string, tastes: Tastes): Plan {
  const before = plan.tasters.find((each) => each.tasterId === tasterId)
  const others = plan.tasters.filter((each) => each.tasterId !== tasterId)
  return {
    ...plan,
    tasters:
      tastes === 'out' ? others : [...others, { ...before, tasterId, knows: tastes === 'knows' }],
  }
}

/** The plan with one of its tasters marked as the baker, or nobody. */
export function withBaker(plan: Plan, tasterId: string | null): Plan {
  return {
    ...plan,
    tasters: plan.tasters.map((taster) => ({ ...taster, baker: taster.tasterId === tasterId })),
  }
}
