import type { AgendaItem } from '@/core/session/agenda.ts'

/**
 * Items by when the hands come to them, those of which nothing tells last. What waits for the oven keeps its turn there,
 * however the moments lie.
 */
export function soonestFirst(
  items: readonly AgendaItem[],
  goesAt: (item: AgendaItem) => number | null,
): { item: AgendaItem; at: number | null }[] {
  let ofOven = Number.NEGATIVE_INFINITY
  return items
    .map((item) => {
      const at = goesAt(item)
      const soonest = at ?? Number.POSITIVE_INFINITY
      if (item.step.kind !== 'bake' || item.do !== 'start') return { item, at, turn: soonest }
      ofOven = Math.max(ofOven, soonest)
      return { item, at, turn: ofOven }
    })
    .toSorted((one, other) => (one.turn === other.turn ? 0 : one.turn - other.turn))
    .map(({ item, at }) => ({ item, at }))
}
