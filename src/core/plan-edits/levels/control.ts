import type { Plan } from '@/core/trial/plan-record.ts'

/** One control at most: marking a level takes the mark from the others, marking it again takes it away. */
export function withControl(plan: Plan, id: string): Plan {
  return {
    ...plan,
    levels: plan.levels.map((level) => {
      const control = level.id === id && !level.control
      return level.control === control ? level : { ...level, control }
    }),
  }
}
