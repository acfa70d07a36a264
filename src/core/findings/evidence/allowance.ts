import { lookLevel } from '@/core/statistics/looks/look-level.ts'
import type { Allowance } from './evidence-shape.ts'

/**
 * How often a trial that was to end after so many sessions, and then was looked at after each one more up to so many, calls
 * a difference without cause when each look is judged at 5 %: simulated for this project with four levels (100,000s of trials; three
 * and five levels differ by at most .004).
 */
const addedRates: Readonly<Record<number, readonly number[]>> = {
  2: [0.084, 0.107, 0.126, 0.141, 0.154, 0.165],
  3: [0.077, 0.097, 0.112, 0.126, 0.137],
  4: [0.073, 0.09, 0.105, 0.117],
  5: [0.07, 0.086, 0.098],
  6: [0.068, 0.083],
}

/** How a trial was to be looked at: the most sessions, written first, and whether findings are looked at before the last. */
export interface Looking {
  most: number | null
  early: boolean
}

/**
 * The share of error each claim may use, as p: 5 % for all comparisons together; of a written expectation 4 % for what was
 * expected and 1 % for a surprise; 5 % one-sided for bounds. When one looks before the last session, each is what the
 * early-strict rule leaves at this look (see `lookLevel`), also at the last. `done` counts the sessions.
 */
export function allowanceOf(levels: number, done: number, { most, early }: Looking): Allowance {
  const looked = most !== null && most > 2 && (early || done < most)
  const at = (total: 0.05 | 0.1 | 0.04 | 0.01) =>
    looked ? lookLevel(total, { levels, most, done }) : total
  return {
    all: at(0.05),
    expected: at(0.04),
    surprise: at(0.01),
    twiceOneSided: at(0.1),
    look: looked ? { done, most } : null,
    added: most !== null && done > most ? { done, most, rate: addedRate(most, done) } : null,
  }
}

/** The true rate of a difference without cause when a trial that was to end after `most` sessions is read after each one more up to `done`. */
export function addedRate(most: number, done: number): number {
  const rates = addedRates[Math.min(6, Math.max(2, most))] as readonly number[]
  return rates[Math.min(rates.length, done - most) - 1] as number
}
