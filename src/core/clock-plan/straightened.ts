import type { RungOf } from './search/day-demands.ts'
import type { DayProblem, Placed } from './search/day-problem.ts'
import { leastDeviation } from './search/least-deviation.ts'
import { wholeHalfMinutes } from './search/whole-half-minutes.ts'
import type { WorkPart } from './work-part.ts'

/** What is done to a piece on its last way to the oven. */
const lastKinds: readonly string[] = ['open', 'top', 'slash', 'bake', 'serve']

/**
 * A found plan as it is followed: its waits as near to the planned ones as its orders allow, and everything but what is done
 * near the oven on a half minute.
 */
export function straightened(
  problem: DayProblem,
  parts: readonly WorkPart[],
  begins: Placed,
  rungOf: RungOf,
): Placed {
  const nearOven = new Set(
    parts.flatMap(({ id, step, what, afterOven }) =>
      what === 'pull' || (afterOven && what === 'work') || lastKinds.includes(step.kind)
        ? [id]
        : [],
    ),
  )
  const straight = leastDeviation(problem, begins, rungOf)
  return wholeHalfMinutes(problem, straight, rungOf, nearOven)
}
