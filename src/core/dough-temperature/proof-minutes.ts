import type { Step } from '@/core/trial/step.ts'
import { gassingRate } from './gassing-rate.ts'

const warmRests: readonly Step['kind'][] = ['autolyse', 'rest', 'fold', 'proof']

/** Planned waiting time in which the dough ferments in the warm: rests, folds and proofs, no cold proof. Seconds. */
export function warmSeconds(steps: readonly Step[]): number {
  return steps
    .filter(({ kind }) => warmRests.includes(kind))
    .reduce((sum, { repeats, waitSeconds }) => sum + repeats * waitSeconds, 0)
}

/**
 * Minutes by which a dough of another temperature is ahead (below zero) or behind after the planned warm time, by the gassing
 * rate: P × (r(wanted)/r(T) − 1). Convention: each dough is taken to keep its temperature through the whole time; drifting
 * to the room makes the true difference smaller. Null outside 15 to 34 °C, where no rate is known.
 */
export function proofMinutes(
  seconds: number,
  wantedCelsius: number,
  doughCelsius: number,
  q10?: number,
): number | null {
  const rate = gassingRate(wantedCelsius, doughCelsius, q10)
  return rate === null ? null : (seconds / 60) * (rate - 1)
}
