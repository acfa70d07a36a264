import type { Step } from '@/core/trial/step.ts'
import { rateAgainstReference } from './cardinal-temperature.ts'
import { coldestComparable } from './comparable-hours.ts'

const warmRests: readonly Step['kind'][] = ['autolyse', 'rest', 'fold', 'proof']

/** Planned waiting time in which the dough ferments in the warm: rests, folds and proofs, no cold proof. Seconds. */
export function warmSeconds(steps: readonly Step[]): number {
  return steps
    .filter(({ kind }) => warmRests.includes(kind))
    .reduce((sum, { repeats, waitSeconds }) => sum + repeats * waitSeconds, 0)
}

/**
 * Minutes by which a dough of another temperature is ahead (below zero) or behind after the planned warm time:
 * P × (γ(wanted)/γ(T) − 1). Convention: each dough is taken to keep its temperature through the whole time; drifting
 * to the room makes the true difference smaller. Null below 10 °C, where the curve says nothing.
 */
export function proofMinutes(
  seconds: number,
  wantedCelsius: number,
  doughCelsius: number,
): number | null {
  if (Math.min(wantedCelsius, doughCelsius) < coldestComparable) return null
  const rate = rateAgainstReference(doughCelsius)
  if (rate === 0) return null
  return (seconds / 60) * (rateAgainstReference(wantedCelsius) / rate - 1)
}
