import { mostLevels } from '@/core/trial/levels-between.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { measuredLevel } from './measured-level.ts'
import { roundedToStep } from './stepped-value.ts'

/** A new level half way between two others; a plan that holds as many as it may, or has no number there, stays. */
export function levelBetween(plan: Plan, lowerId: string, upperId: string, id: string): Plan {
  const lower = plan.levels.find((level) => level.id === lowerId)
  const upper = plan.levels.find((level) => level.id === upperId)
  if (!lower || !upper || lower.value === null || upper.value === null) return plan
  if (plan.levels.length >= mostLevels) return plan
  const middle = (lower.value + upper.value) / 2
  const rounded = roundedToStep(middle, plan.levels)
  const value = rounded > lower.value && rounded < upper.value ? rounded : middle
  const added = measuredLevel(id, value)
  return {
    ...plan,
    levels: plan.levels.flatMap((level) => (level.id === upper.id ? [added, level] : [level])),
  }
}
