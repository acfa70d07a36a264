import { type Level, mostLevelValue } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { keptNumber } from '@/core/units/number-text.ts'
import { nextLevelValue } from './next-level.ts'

/** A measured level at this value, or at the largest that a level can have, named by it. */
export function measuredLevel(id: string, wanted: number, control = false): Level {
  const value = Math.max(-mostLevelValue, Math.min(mostLevelValue, wanted))
  return { id, value, label: keptNumber(value), control }
}

/** The plan with a level more: a step past the last one, or an option of a choice. */
export function withAnotherLevel(plan: Plan, id: string): Plan {
  const level =
    plan.factor.acts.on === 'choice'
      ? { id, value: null, label: `Option ${plan.levels.length + 1}`, control: false }
      : measuredLevel(id, nextLevelValue(plan))
  return { ...plan, levels: [...plan.levels, level] }
}

/** The level at another value, named by it. */
export function atValue(level: Level, value: number): Level {
  return { ...level, value, label: keptNumber(value) }
}
