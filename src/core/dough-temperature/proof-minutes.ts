import { max, min } from 'd3-array'
import type { Step } from '@/core/trial/step.ts'
import { gassingQ10, gassingRate } from './gassing-rate.ts'

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

/** Minutes by the slowest and by the quickest rate. */
export interface MinutesEnds {
  least: number
  most: number
}

/**
 * Minutes of proof that doughs of these temperatures lie apart at most, by the usual gassing rate, and by the ends of the rates
 * that were seen (1.8 and 2.6 in ten degrees). Null where a dough lies outside the rate's temperatures.
 */
export function minutesApart(
  seconds: number,
  wantedCelsius: number,
  doughCelsius: readonly number[],
): { spreadMinutes: number | null; spreadMinutesEnds: MinutesEnds | null } {
  const apart = (q10: number) => {
    const minutes = doughCelsius.map((one) => proofMinutes(seconds, wantedCelsius, one, q10))
    return minutes.every((one) => one !== null) ? (max(minutes) ?? 0) - (min(minutes) ?? 0) : null
  }
  const [least, usual, most] = [gassingQ10.least, gassingQ10.usual, gassingQ10.most].map(apart)
  return {
    spreadMinutes: usual ?? null,
    spreadMinutesEnds:
      typeof least === 'number' && typeof most === 'number' ? { least, most } : null,
  }
}
