import { emptySeconds, type OvenBake } from './oven-bake.ts'
import { soonestFirst } from './oven-turns.ts'
import type { BetweenLoads } from './room-of-day.ts'

/**
 * How late each bake could begin without keeping a later one waiting, in seconds: until one of its places, or the oven for
 * another temperature, is wanted; where nothing follows it, with the last of its own load. The bakes stand in the order the
 * oven takes them, with when each begins; those that do not need the same place are thought to have one each.
 */
export function latestBegin(
  bakes: readonly OvenBake[],
  beginSeconds: readonly number[],
  { places, between }: { places: number; between: BetweenLoads },
): number[] {
  const slots = slotsOf(bakes, beginSeconds, places)
  return bakes.map((bake, at) => {
    const own = beginSeconds[at] ?? 0
    const of = (wanted: (other: OvenBake, later: number) => boolean) =>
      bakes.flatMap((other, later) => (wanted(other, later) ? [beginSeconds[later] ?? own] : []))
    const leaves = bakes.flatMap((other, later) => {
      if (later <= at) return []
      const empty = emptySeconds(bake, other)
      const shared = slots[later]?.some((slot) => slots[at]?.includes(slot))
      const otherLoad = other.load !== bake.load
      if (empty === null && !shared && !otherLoad) return []
      const rests = otherLoad
        ? between.pullSeconds + Math.max(between.recoverySeconds, empty ?? 0)
        : (empty ?? 0)
      return [(beginSeconds[later] ?? own) - bake.holdSeconds - rests]
    })
    const mates = of((other) => other.load === bake.load)
    const ahead = of((other, later) => later > at && other.load !== bake.load)
    const least = leaves.length > 0 ? Math.min(...leaves) : Math.max(own, ...mates)
    return Math.max(own, Math.min(least, ...ahead))
  })
}

/** Each bake in the places that have stood empty longest. */
function slotsOf(
  bakes: readonly OvenBake[],
  beginSeconds: readonly number[],
  places: number,
): number[][] {
  const free = Array.from({ length: places }, () => Number.NEGATIVE_INFINITY)
  return bakes.map((bake, at) => {
    const own = soonestFirst(free).slice(0, bake.places)
    for (const slot of own) free[slot] = (beginSeconds[at] ?? 0) + bake.holdSeconds
    return own
  })
}
