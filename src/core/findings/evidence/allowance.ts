import { lookLevel } from '@/core/statistics/looks/look-level.ts'
import { addedRate } from './added-rate.ts'
import type { Allowance } from './evidence-shape.ts'

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
