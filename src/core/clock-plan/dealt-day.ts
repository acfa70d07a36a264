/** What is done to: a whole dough or one piece of it. */
export interface WorkedUnit {
  kind: 'batch' | 'piece'
  id: string
}

/** What the plan of a day needs to know of a session: its doughs, its pieces and the orders that were dealt. */
export interface DealtDay {
  batches: readonly { id: string; levelId: string | null }[]
  pieces: readonly {
    id: string
    batchId: string
    levelId: string
    role: 'counted' | 'warm-up' | 'spare'
  }[]
  dealt: {
    doughOrder: readonly string[]
    loads: readonly { number: number; pieceIds: readonly string[] }[]
  }
}

/** The pieces in the order they go into the oven. */
export function piecesByLoad(day: DealtDay): { id: string; load: number; place: number }[] {
  return day.dealt.loads
    .toSorted((one, other) => one.number - other.number)
    .flatMap(({ number: load, pieceIds }) => pieceIds.map((id, place) => ({ id, load, place })))
}
