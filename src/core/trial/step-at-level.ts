import type { Factor } from './factor.ts'
import type { Level } from './level.ts'
import { levelCelsius } from './level-celsius.ts'
import type { Step } from './step.ts'

const secondsOf: Record<string, number> = {
  s: 1,
  sec: 1,
  second: 1,
  seconds: 1,
  min: 60,
  minute: 60,
  minutes: 60,
  h: 3600,
  hour: 3600,
  hours: 3600,
  d: 86_400,
  day: 86_400,
  days: 86_400,
}

/**
 * A step of the method as one level has it: a time factor sets its wait, a bake factor its oven, a fold count its repeats, a
 * choice may leave it out (null). Other factors leave steps alone, and so does a null level (a dough for all levels).
 * A time is read in the factor's own unit; cold hours without a known unit are hours, other times minutes.
 */
export function stepAtLevel(factor: Factor, step: Step, level: Level | null): Step | null {
  if (!level) return step
  if (level.changes?.some((change) => isLeftOut(change, step.id))) return null
  const { acts } = factor
  if (level.value === null || !('stepId' in acts) || acts.stepId !== step.id) return step
  switch (acts.on) {
    case 'fold-count':
      return level.value < 1 ? null : { ...step, repeats: Math.round(level.value) }
    case 'bake-temperature':
      return { ...step, celsius: levelCelsius(factor, level.value) }
    default:
      return { ...step, waitSeconds: level.value * secondsIn(factor) }
  }
}

function secondsIn({ acts, unitOfMeasure }: Factor): number {
  return secondsOf[unitOfMeasure.trim().toLowerCase()] ?? (acts.on === 'cold-hours' ? 3600 : 60)
}

const isLeftOut = (change: NonNullable<Level['changes']>[number], stepId: string) =>
  change.what === 'step' && change.stepId === stepId && !change.done
