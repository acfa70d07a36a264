import type { Plan } from '@/core/trial/plan-record.ts'
import type { Mend, MomentMend } from './search/mend.ts'

/** By how much another moment is off as it is shown, and kept: up to the next five minutes; seconds, later above zero. */
export function movedSeconds({ mend, seconds }: MomentMend): number {
  const whole = Math.ceil(seconds / 300) * 300
  return mend.startsWith('later') ? whole : -whole
}

/**
 * The plan with one mend of its day applied; null where a mend is no change of the plan: another order is dealt, not planned,
 * and wider waits are only accepted.
 */
export function mendedPlan(plan: Plan, mend: Mend): Plan | null {
  switch (mend.mend) {
    case 'later-end':
    case 'earlier-end':
    case 'later-start':
    case 'earlier-start': {
      const fixed = plan.day?.fixed
      if (!fixed) return null
      const at = fixed.at + movedSeconds(mend) * 1000
      return { ...plan, day: { ...plan.day, fixed: { ...fixed, at } } }
    }
    case 'one-more':
      return withOneMore(plan, mend.resource)
    case 'same-for-all': {
      const steps = plan.steps.map((step) =>
        step.id === mend.step
          ? { ...step, waitSeconds: Math.max(0, step.waitSeconds + mend.seconds) }
          : step,
      )
      const acts = plan.factor.acts
      return 'stepId' in acts && acts.stepId === mend.step ? null : { ...plan, steps }
    }
    case 'free-oven-order':
    case 'wider-waits':
      return null
  }
}

function withOneMore(plan: Plan, resource: string): Plan | null {
  const { day } = plan
  switch (resource) {
    case 'hands':
      return { ...plan, pairsOfHands: plan.pairsOfHands + 1 }
    case 'oven':
      return { ...plan, placesPerLoad: plan.placesPerLoad + 1 }
    case 'mixer':
      return { ...plan, day: { ...day, mixers: (day?.mixers ?? 1) + 1 } }
    case 'fridge':
      return { ...plan, day: { ...day, fridgePlaces: (day?.fridgePlaces ?? 1) + 1 } }
    default:
      return null
  }
}
