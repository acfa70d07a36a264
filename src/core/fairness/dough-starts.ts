import { piecesAsked } from '@/core/design/pieces-asked.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

interface Baked {
  batchId: string
  /** From the mix to the oven by the method alone, and in the oven. */
  methodSeconds: number
  bakeSeconds: number
}

/**
 * When each dough is begun and each piece goes into the oven, in seconds from the first dough. Doughs keep their order, one
 * after another by the longest that a single step keeps one pair of hands with one dough; the pieces go in in the order
 * given, each when it is ready and a place is free. Then every dough is begun as late as that leaves it: no sooner than its
 * first piece's turn asks, and before the dough that follows it.
 */
export function doughStarts(
  plan: Plan,
  doughOrder: readonly string[],
  baked: readonly Baked[],
): { startSeconds: Map<string, number>; inSeconds: number[] } {
  const hands = handsSeconds(plan)
  const earliest = new Map(doughOrder.map((id, index) => [id, index * hands]))
  const placesFree = Array.from({ length: plan.placesPerLoad }, () => 0)
  const inSeconds = baked.map(({ batchId, methodSeconds, bakeSeconds }) => {
    const free = placesFree.indexOf(Math.min(...placesFree))
    const inAt = Math.max(placesFree[free] ?? 0, (earliest.get(batchId) ?? 0) + methodSeconds)
    placesFree[free] = inAt + bakeSeconds
    return inAt
  })
  const startSeconds = new Map<string, number>()
  let before = Number.POSITIVE_INFINITY
  for (const id of doughOrder.toReversed()) {
    const asks = baked.flatMap(({ batchId, methodSeconds }, at) =>
      batchId === id ? [(inSeconds[at] ?? 0) - methodSeconds] : [],
    )
    before = Math.min(before, ...asks)
    startSeconds.set(id, Number.isFinite(before) ? before : (earliest.get(id) ?? 0))
    before -= hands
  }
  return { startSeconds, inSeconds }
}

/** The longest that a single step keeps the hands with one dough; the oven's own time is its turn, not theirs. */
function handsSeconds(plan: Plan): number {
  const { perBatch } = piecesAsked(plan)
  return Math.max(
    0,
    ...plan.steps.map((step) => step.handsSeconds * (step.per === 'piece' ? perBatch : 1)),
  )
}
