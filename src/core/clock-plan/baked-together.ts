import { mixedApart } from '@/core/trial/doughs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Block, DayProblem, Placed, Stay } from './search/day-problem.ts'
import { waysDiffer } from './way-to-oven.ts'
import type { PullPart, WorkPart } from './work-part.ts'

/** What a night takes wholly, so that nothing that wants some of it reaches over the night: as a resource has its name. */
export const oneTasting = 'one tasting'

/** True where one dough runs apart in time, so that the method itself parts the bakes of its pieces. */
export const isPartedByMethod = (plan: Plan) => !mixedApart(plan) && waysDiffer(plan)

/**
 * The day with the demand that no night lies between the bakes of its one tasting: what is tasted together is baked together,
 * and then cools, and is cut, together. Each bake and the next in turn ask for all hours from the launch of the one to the pull
 * of the other, and the hours in which nobody works are not among them. Asked of every tasting but one whose
 * bakes the method itself parts.
 */
export function bakedTogether(
  plan: Plan,
  parts: readonly WorkPart[],
  problem: DayProblem,
): DayProblem {
  const nights = nightsOf(problem)
  if (nights.length === 0 || isPartedByMethod(plan)) return problem
  const stays = fromBakeToBake(pullsOf(parts))
  if (stays.length === 0) return problem
  const count = stays.length
  return {
    ...problem,
    capacities: { ...problem.capacities, [oneTasting]: count },
    stays: [...problem.stays, ...stays],
    // More than there is, so that one more of it mends nothing.
    blocks: [
      ...problem.blocks,
      ...nights.map((night) => ({ ...night, resource: oneTasting, count: count + 1 })),
    ],
  }
}

/** The day without that demand; null where it is not asked. */
export function bakedApart(problem: DayProblem): DayProblem | null {
  if (!(oneTasting in problem.capacities)) return null
  const { [oneTasting]: _, ...capacities } = problem.capacities
  const others = <Of extends { resource: string }>(all: readonly Of[]) =>
    all.filter(({ resource }) => resource !== oneTasting)
  return { ...problem, capacities, stays: others(problem.stays), blocks: others(problem.blocks) }
}

/** A night between the bakes of one tasting. */
export interface NightBetween {
  /** Doughs whose last bake lies before it, and whose first lies after it; a dough that is baked on both sides is in both. */
  beforeBatchIds: string[]
  afterBatchIds: string[]
  /** From the first bake that is out of the oven to the last: so much older is what was baked first. */
  apartSeconds: number
}

/** The night, of several the first, that parts the bakes of a planned day; null where none does. */
export function nightBetween(
  parts: readonly WorkPart[],
  { blocks, capacities }: DayProblem,
  begins: Placed,
): NightBetween | null {
  const pulls = pullsOf(parts).toSorted((one, other) => at(begins, one) - at(begins, other))
  const [first] = pulls
  const last = pulls.at(-1)
  if (!first || !last) return null
  const night = nightsOf({ blocks, capacities }).find(
    ({ fromSeconds, toSeconds }) =>
      at(begins, first) <= fromSeconds && at(begins, last) >= toSeconds,
  )
  if (!night) return null
  const batchIds = (of: readonly PullPart[]) => [...new Set(of.map(({ batchId }) => batchId))]
  return {
    beforeBatchIds: batchIds(pulls.filter((pull) => at(begins, pull) <= night.fromSeconds)),
    afterBatchIds: batchIds(pulls.filter((pull) => at(begins, pull) > night.fromSeconds)),
    apartSeconds: at(begins, last) - at(begins, first),
  }
}

const at = (begins: Placed, { id }: PullPart) => begins[id] ?? 0

const pullsOf = (parts: readonly WorkPart[]) =>
  parts.flatMap((part) => (part.what === 'pull' ? [part] : []))

/** The hours in which nobody at all works. */
function nightsOf({ blocks, capacities }: Pick<DayProblem, 'blocks' | 'capacities'>): Block[] {
  const hands = capacities.hands ?? 1
  return blocks.filter(({ resource, count }) => resource === 'hands' && count >= hands)
}

/** Loads go in turn; within a load nobody knows which piece is first, so that each reaches to the other. */
function fromBakeToBake(pulls: readonly PullPart[]): Stay[] {
  const inTurn = pulls.toSorted((one, other) => one.load - other.load)
  const stay = (from: PullPart, to: PullPart): Stay => ({
    ...{ resource: oneTasting, count: 1, from: from.launchId, to: to.id, afterSeconds: 0 },
  })
  return inTurn.slice(1).flatMap((next, index) => {
    const before = inTurn[index]
    if (!before) return []
    return before.load === next.load
      ? [stay(before, next), stay(next, before)]
      : [stay(before, next)]
  })
}
