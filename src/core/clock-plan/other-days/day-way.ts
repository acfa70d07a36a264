import type { KeptTimes } from '@/core/trial/day-wishes.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/**
 * A way in which a day may lie: as was asked; begun or ended at another moment (UTC ms); with a cold wait of another length, the
 * same for all doughs; with somebody at work in the hours in which nobody was to be.
 */
export type DayWay =
  | { way: 'as-asked' }
  | { way: 'other-moment'; at: number }
  | { way: 'other-cold'; stepId: string; seconds: number }
  | { way: 'night-work' }

/** The plan with its day the other way; what it says of its day where the way cannot be applied any more. */
export function planOfWay(plan: Plan, way: DayWay): Plan {
  switch (way.way) {
    case 'as-asked':
      return plan
    case 'other-moment': {
      const fixed = plan.day?.fixed
      return fixed ? { ...plan, day: { ...plan.day, fixed: { ...fixed, at: way.at } } } : plan
    }
    case 'other-cold': {
      const steps = plan.steps.map((step) =>
        step.id === way.stepId ? { ...step, waitSeconds: way.seconds } : step,
      )
      return { ...plan, steps }
    }
    case 'night-work': {
      const { quiet: _, ...day } = plan.day ?? {}
      return { ...plan, day }
    }
  }
}

/** The plan with its day the other way and the times found for it kept. */
export function planWithDay(plan: Plan, way: DayWay, kept: KeptTimes): Plan {
  const changed = planOfWay(plan, way)
  return { ...changed, day: { ...changed.day, kept } }
}
