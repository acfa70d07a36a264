/** A piece on its way through the oven, in the order of the loads. */
export interface Baked {
  batchId: string
  /** The load it belongs to, and the oven's temperature in it as a key. */
  load: number
  heat: string
  /** From the mix to the oven by the method alone, and in the oven. */
  methodSeconds: number
  bakeSeconds: number
}

/** When each piece goes in, and which of the oven's places (from 0) it takes. */
export interface OvenTurns {
  inSeconds: number[]
  slots: number[]
}

/**
 * The oven takes the pieces in the order given, each when it is ready and a place is free: none before the loads ahead of its
 * own are in, and none at another temperature before all others are out.
 */
export function ovenTurns(
  baked: readonly Baked[],
  places: number,
  readySeconds: (piece: Baked) => number,
): OvenTurns {
  const free = Array.from({ length: places }, () => 0)
  const slots: number[] = []
  const inSeconds: number[] = []
  for (const piece of baked) {
    const slot = free.indexOf(Math.min(...free))
    const cooled = baked[inSeconds.length - 1]?.heat === piece.heat ? 0 : Math.max(...free)
    const ahead = inSeconds.filter((_, at) => baked[at]?.load !== piece.load)
    const inAt = Math.max(free[slot] ?? 0, readySeconds(piece), cooled, ...ahead)
    free[slot] = inAt + piece.bakeSeconds
    slots.push(slot)
    inSeconds.push(inAt)
  }
  return { inSeconds, slots }
}

/**
 * How late each piece could go in without keeping a later one waiting, in seconds: until its place, or the oven for another
 * temperature, is wanted; where nothing follows it, with the last of its own load.
 */
export function latestIn(baked: readonly Baked[], { inSeconds, slots }: OvenTurns): number[] {
  return baked.map((piece, at) => {
    const own = inSeconds[at] ?? 0
    const follows = baked.findIndex(
      ({ heat }, later) => later > at && (slots[later] === slots[at] || heat !== piece.heat),
    )
    const mates = inSeconds.filter((_, mate) => baked[mate]?.load === piece.load)
    const after = inSeconds.filter((_, later) => later > at && baked[later]?.load !== piece.load)
    const leaves =
      follows < 0 ? Math.max(...mates) : (inSeconds[follows] ?? own) - piece.bakeSeconds
    return Math.max(own, Math.min(leaves, ...after))
  })
}
