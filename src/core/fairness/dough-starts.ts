import { handsOnDoughSeconds } from '@/core/clock-plan/bake-order.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { type Baked, latestIn, ovenTurns } from './oven-turns.ts'

/**
 * When each dough is begun and each piece goes into the oven, in seconds from the first dough. Doughs keep their order, one
 * after another by the longest that a single step keeps one pair of hands with one dough; the pieces go in in the order
 * given, each when it is ready and a place is free. Then every dough is begun as late as that leaves it: no sooner than its
 * pieces' turns at the oven ask, and before the dough that follows it. So a dough that is ready long before its neighbours in
 * the oven is begun later by the difference and meets them there.
 */
export function doughStarts(
  plan: Plan,
  doughOrder: readonly string[],
  baked: readonly Baked[],
): { startSeconds: Map<string, number>; inSeconds: number[] } {
  const hands = handsOnDoughSeconds(plan)
  const earliest = new Map(doughOrder.map((id, index) => [id, index * hands]))
  const ready = (starts: ReadonlyMap<string, number>) => (piece: Baked) =>
    (starts.get(piece.batchId) ?? 0) + piece.methodSeconds
  const { slots, inSeconds: soonest } = ovenTurns(baked, plan.placesPerLoad, ready(earliest))
  let inSeconds = soonest
  let startSeconds = earliest
  // Each round lets the pieces ahead of those just moved follow them; the last piece in never moves.
  for (let round = 0; round <= baked.length; round += 1) {
    const latest = latestIn(baked, { inSeconds, slots })
    startSeconds = begunBefore(doughOrder, hands, (id) => {
      const asks = baked.flatMap(({ batchId, methodSeconds }, at) =>
        batchId === id ? [(latest[at] ?? 0) - methodSeconds] : [],
      )
      return asks.length > 0 ? Math.min(...asks) : (earliest.get(id) ?? 0)
    })
    const readyAt = ready(startSeconds)
    const moved = baked.map((piece, at) => Math.max(inSeconds[at] ?? 0, readyAt(piece)))
    if (moved.every((inAt, at) => inAt === inSeconds[at])) break
    inSeconds = moved
  }
  return { startSeconds, inSeconds }
}

/** Starts as late as each dough may be begun, one pair of hands before the dough that follows it. */
function begunBefore(
  doughOrder: readonly string[],
  hands: number,
  latestStart: (id: string) => number,
): Map<string, number> {
  const startSeconds = new Map<string, number>()
  let before = Number.POSITIVE_INFINITY
  for (const id of doughOrder.toReversed()) {
    before = Math.min(before, latestStart(id))
    startSeconds.set(id, before)
    before -= hands
  }
  return startSeconds
}
