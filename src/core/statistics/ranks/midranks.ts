/** Ranks 1 up, ties sharing their mean; `tieTerm` is Σ(t³ − t) over groups of ties. */
export type Midranks = { ranks: number[]; tieTerm: number }

/**
 * Ranks of some values from the smallest up. Values tie when they are equal to 10 decimals.
 *
 * @example midranks([5, 7, 7]) // {"ranks": [1, 2.5, 2.5], "tieTerm": 6} (by hand: second and third shared, 2³ − 2)
 */
export function midranks(values: readonly number[]): Midranks {
  const keys = values.map((value) => Math.round(value * 1e10))
  const order = keys.map((_, i) => i).sort((i, j) => (keys[i] as number) - (keys[j] as number))
  const ranks = new Array<number>(values.length).fill(0)
  let tieTerm = 0
  for (let from = 0; from < order.length; ) {
    let to = from + 1
    while (to < order.length && keys[order[to] as number] === keys[order[from] as number]) to += 1
    for (const i of order.slice(from, to)) ranks[i] = (from + 1 + to) / 2
    tieTerm += (to - from) ** 3 - (to - from)
    from = to
  }
  return { ranks, tieTerm }
}
