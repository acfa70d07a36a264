interface LoadsWanted<Piece> {
  warmUp: Piece | null
  /** The pieces of each flight in the order they are baked. */
  flights: readonly (readonly Piece[])[]
  placesPerLoad: number
  asBaked: boolean
  /** The oven's temperature for a piece, as a key (`ovenHeat`); without it one for all. */
  heatOf?: (piece: Piece) => string
}

/**
 * Puts the pieces into loads; the index in a load is the place. The warm-up piece goes first and alone. A flight that does not
 * fit at once is split as evenly as it goes, in its order, so that flights balanced for position are balanced for load and
 * place too. Where a rested bake has room for several whole flights, they share a load; pieces eaten hot never do. Pieces that
 * want the oven at different temperatures never share a load: in every flight each temperature has loads of its own, in the
 * order in which it is first wanted, so that the oven is brought to it anew and its flights are more than one try.
 */
export function ovenLoads<Piece>({
  warmUp,
  flights,
  placesPerLoad,
  asBaked,
  heatOf = () => '',
}: LoadsWanted<Piece>): Piece[][] {
  const lines = Math.max(1, ...flights.map((flight) => flight.length))
  const apart = asBaked || byHeat(flights.flat(), heatOf).length > 1
  const together = apart ? 1 : Math.max(1, Math.floor(placesPerLoad / lines))
  const counted: Piece[][] = []
  for (let at = 0; at < flights.length; at += together)
    for (const alike of byHeat(flights.slice(at, at + together).flat(), heatOf))
      counted.push(...evenParts(alike, placesPerLoad))
  return warmUp === null ? counted : [[warmUp], ...counted]
}

function byHeat<Piece>(pieces: readonly Piece[], heatOf: (piece: Piece) => string): Piece[][] {
  const found = new Map<string, Piece[]>()
  for (const piece of pieces) {
    const heat = heatOf(piece)
    found.set(heat, [...(found.get(heat) ?? []), piece])
  }
  return [...found.values()]
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
