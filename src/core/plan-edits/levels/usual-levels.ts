import type { FactorKind } from '@/core/trial/factor.ts'
import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { measuredLevel } from './measured-level.ts'
import { presentValue } from './next-level.ts'

/** A gentle step of each kind, in its own unit (common practice, from memory); a choice and an own factor have none. */
const gentleSteps: Partial<Record<FactorKind, number>> = {
  hydration: 4,
  salt: 0.4,
  yeast: 0.2,
  'preferment-share': 10,
  'flour-share': 15,
  ingredient: 1,
  'rest-time': 10,
  'proof-time': 15,
  'cold-hours': 6,
  'fold-count': 1,
  'bake-temperature': 15,
  'bake-time': 3,
  'piece-mass': 50,
}

/**
 * Levels to start a kind of factor from: one step down, what the plan has now as the control, one step up; from nothing
 * upwards where a step down would leave nothing or less. Two options for a choice; none for a factor of one's own, whose
 * numbers nobody knows. What the plan has is rounded to three figures.
 */
export function usualLevels(plan: Plan, newId: () => string): Level[] {
  const kind = plan.factor.acts.on
  if (kind === 'choice')
    return [1, 2].map((count) => ({
      ...{ id: newId(), value: null, label: `Option ${count}`, control: count === 1 },
    }))
  const step = gentleSteps[kind]
  if (step === undefined) return []
  const now = Number(presentValue(plan).toPrecision(3))
  const first = now - step > 0 ? now - step : now
  return [0, 1, 2].map((count) => {
    const value = Number((first + count * step).toPrecision(12))
    return measuredLevel(newId(), value, value === now)
  })
}
