interface LoadsWanted<Piece> {
  warmUp: Piece | null
  /** The pieces of each flight in the order they are baked. */
  flights: readonly (readonly Piece[])[]
  placesPerLoad: number
  asBaked: boolean
}

/**
 * Puts the pieces into loads; the index in a load is the place. The warm-up piece goes first and alone. A flight that does not
 * fit at once is split as evenly as it goes, in its order, so that flights balanced for position are balanced for load and
 * place too. Where a rested bake has room for several whole flights, they share a load; pieces eaten hot never do.
 */
export function ovenLoads<Piece>({
  warmUp,
  flights,
  placesPerLoad,
  asBaked,
}: LoadsWanted<Piece>): Piece[][] {
  const lines = Math.max(1, ...flights.map((flight) => flight.length))
  const together = asBaked ? 1 : Math.max(1, Math.floor(placesPerLoad / lines))
  const counted: Piece[][] = []
  for (let at = 0; at < flights.length; at += together)
    counted.push(...evenParts(flights.slice(at, at + together).flat(), placesPerLoad))
  return warmUp === null ? counted : [[warmUp], ...counted]
}

function evenParts<Piece>(pieces: Piece[], most: number): Piece[][] {
  const parts = Math.ceil(pieces.length / most)
  const least = Math.floor(pieces.length / parts)
  const larger = pieces.length % parts
  return Array.from({ length: parts }, (_, part) => {
    const from = part * least + Math.min(part, larger)
    return pieces.slice(from, from + least + (part < larger ? 1 : 0))
  })
}
