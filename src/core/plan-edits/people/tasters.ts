import type { Plan } from '@/core/trial/plan-record.ts'

export type Tastes = 'out' | 'blind' | 'knows'

/** The plan with a taster in it, blind or knowing which is which, or out of it. */
export function withTaster(plan: Plan, tasterId: string, tastes: Tastes): Plan {
  const others = plan.tasters.filter((each) => each.tasterId !== tasterId)
  return {
    ...plan,
    tasters: tastes === 'out' ? others : [...others, { tasterId, knows: tastes === 'knows' }],
  }
}
