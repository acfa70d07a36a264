import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Step } from '@/core/trial/step.ts'
import { stepAtLevel } from '@/core/trial/step-at-level.ts'

/**
 * Seconds that the wetted dough of a level stands before its last mix ends: every autolyse, and what it waits or rests after an earlier
 * mix; 0 where the water goes in at the only mix. A level may have its own rest, or none.
 */
export function restInMixSeconds(
  { steps, factor }: Pick<Plan, 'steps' | 'factor'>,
  level: Level | null,
): number {
  let wet = false
  let seconds = 0
  for (const each of beforeLastMix(steps)) {
    const step = stepAtLevel(factor, each, level)
    if (!step) continue
    wet ||= wets(step)
    if (wet && (wets(step) || step.kind === 'rest')) seconds += step.repeats * step.waitSeconds
  }
  return seconds
}

/** Whether the water goes in at an autolyse. */
export function hasAutolyse({ steps }: Pick<Plan, 'steps'>): boolean {
  return beforeLastMix(steps).find(wets)?.kind === 'autolyse'
}

const wets = ({ kind }: Step) => kind === 'autolyse' || kind === 'mix'

function beforeLastMix(steps: Plan['steps']): Plan['steps'] {
  const last = steps.findLastIndex(({ kind }) => kind === 'mix')
  return steps.slice(0, last < 0 ? steps.length : last)
}
