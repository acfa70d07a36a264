import { latestBegin } from './latest-begin.ts'
import type { OvenBake } from './oven-bake.ts'
import { inTurn, ovenTurns } from './oven-turns.ts'
import type { BetweenLoads } from './room-of-day.ts'

/** A bake and how long its dough takes to it by the method alone. */
export interface BakeOnItsWay extends OvenBake {
  methodSeconds: number
}

/**
 * When each dough is begun and each bake begins, in seconds from the first dough. Doughs keep their order, one after another by
 * the longest that a single step keeps one pair of hands with one dough (`handsSeconds`); the bakes follow in the order of their
 * loads, each when it is ready and has its place. Then every dough is begun as late as that leaves it: no sooner than its turns at the
 * oven ask, and before the dough that follows it. So a dough that is ready long before its neighbours in the oven is begun
 * later by the difference and meets them there.
 */
export function doughStarts(
  doughOrder: readonly string[],
  bakes: readonly BakeOnItsWay[],
  {
    handsSeconds,
    places,
    between,
  }: { handsSeconds: number; places: number; between: BetweenLoads },
): { startSeconds: Map<string, number>; bakeSeconds: Map<string, number> } {
  const earliest = new Map(doughOrder.map((id, index) => [id, index * handsSeconds]))
  const turnsFrom = (starts: ReadonlyMap<string, number>) => {
    const queue = inTurn(
      bakes.map((bake) => ({
        ...bake,
        readySeconds: (starts.get(bake.batchId) ?? 0) + bake.methodSeconds,
      })),
    )
    return { queue, begins: ovenTurns(queue, { places, between }) }
  }
  let starts = earliest
  let { queue, begins } = turnsFrom(starts)
  // Each round lets the bakes ahead of those just moved follow them; the last one never moves.
  for (let round = 0; round <= bakes.length; round += 1) {
    const latest = latestBegin(queue, begins, { places, between })
    const before = starts
    starts = begunBefore(doughOrder, handsSeconds, (id) => {
      const asks = queue.flatMap(({ batchId, methodSeconds }, at) =>
        batchId === id ? [(latest[at] ?? 0) - methodSeconds] : [],
      )
      return asks.length > 0 ? Math.min(...asks) : (earliest.get(id) ?? 0)
    })
    ;({ queue, begins } = turnsFrom(starts))
    if (doughOrder.every((id) => starts.get(id) === before.get(id))) break
  }
  return {
    startSeconds: starts,
    bakeSeconds: new Map(queue.map(({ id }, at) => [id, begins[at] ?? 0])),
  }
}

/** Starts as late as each dough may be begun, one pair of hands before the dough that follows it. */
function begunBefore(
  doughOrder: readonly string[],
  handsSeconds: number,
  latestStart: (id: string) => number,
): Map<string, number> {
  const startSeconds = new Map<string, number>()
  let before = Number.POSITIVE_INFINITY
  for (const id of doughOrder.toReversed()) {
    before = Math.min(before, latestStart(id))
    startSeconds.set(id, before)
    before -= handsSeconds
  }
  return startSeconds
}
