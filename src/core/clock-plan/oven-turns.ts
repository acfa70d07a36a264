import { emptySeconds, type OvenBake } from './oven-bake.ts'
import type { BetweenLoads } from './room-of-day.ts'

/** A bake that has begun, with the moment the hands took it up and when it is out; in seconds of the day. */
export interface BegunBake extends OvenBake {
  beginSeconds: number
  inSeconds: number
  outSeconds: number
}

/** A bake to come, and when it is ready for the oven. */
export interface WaitingBake extends OvenBake {
  readySeconds: number
}

/** Bakes in the order in which the oven takes them: load by load, and within a load as each is ready. */
export function inTurn<Bake extends WaitingBake>(waiting: readonly Bake[]): Bake[] {
  return waiting.toSorted((one, other) =>
    one.load === other.load
      ? one.readySeconds - other.readySeconds
      : one.load < other.load
        ? -1
        : 1,
  )
}

interface Oven {
  places: number
  begun?: readonly BegunBake[]
  /** What is not begun yet begins no sooner than now. */
  nowSeconds?: number
  between?: BetweenLoads
}

/**
 * When each waiting bake begins. The oven takes the bakes in the order given (`inTurn`), each when it is ready and has its places: none before the loads ahead of its
 * own are out and the oven is as hot again, and none at another temperature before all others are out and the oven has come to it. What is inside keeps its place
 * until it is out. What should have begun before `nowSeconds` keeps that moment, but is thought to begin now by those after it.
 */
export function ovenTurns(
  waiting: readonly WaitingBake[],
  {
    places,
    begun = [],
    nowSeconds = Number.NEGATIVE_INFINITY,
    between = { pullSeconds: 0, recoverySeconds: 0 },
  }: Oven,
): number[] {
  const free = Array.from({ length: places }, () => Number.NEGATIVE_INFINITY)
  for (const bake of begun.toSorted((one, other) => one.inSeconds - other.inSeconds))
    for (const slot of latestFree(free, bake)) free[slot] = bake.outSeconds
  const baking: Omit<BegunBake, 'inSeconds'>[] = [...begun]
  return waiting.map((bake) => {
    const begins = Math.max(
      bake.readySeconds,
      free.toSorted((one, other) => one - other)[bake.places - 1] ?? bake.readySeconds,
      ...baking.flatMap((other) => {
        const empty = emptySeconds(other, bake)
        if (other.load >= bake.load)
          return empty === null ? [] : [other.outSeconds + between.pullSeconds + empty]
        const rests = Math.max(between.recoverySeconds, empty ?? 0)
        return [other.outSeconds + between.pullSeconds + rests]
      }),
    )
    const from = Math.max(begins, nowSeconds)
    const outSeconds = from + bake.holdSeconds
    const own = latestFree(free, { ...bake, inSeconds: from + bake.handsSeconds })
    for (const slot of own) free[slot] = outSeconds
    baking.push({ ...bake, beginSeconds: from, outSeconds })
    return begins
  })
}

/** The places that were free last when a bake went in, so that a place that stood empty is known to have done so. */
function latestFree(
  free: readonly number[],
  { inSeconds, places }: Pick<BegunBake, 'inSeconds' | 'places'>,
): number[] {
  const order = soonestFirst(free)
  const could = order.filter((slot) => (free[slot] ?? 0) <= inSeconds)
  return could.length >= places ? could.slice(-places) : order.slice(0, places)
}

/** The oven's places by when they are free, the soonest first. */
export function soonestFirst(free: readonly number[]): number[] {
  return free
    .map((_, slot) => slot)
    .toSorted((one, other) => {
      const [a = 0, b = 0] = [free[one], free[other]]
      return a === b ? one - other : a - b
    })
}
