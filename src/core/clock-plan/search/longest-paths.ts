/** No path: far below any sum of real ones, and far enough from the end of the number range to be added to itself. */
export const none = -1_000_000_000
const isNone = -500_000_000

/** Longest paths between all pairs of `size` nodes, row by row: x_to − x_from is at least the entry. */
export interface Paths {
  size: number
  longest: Int32Array
}

export function emptyPaths(size: number): Paths {
  const longest = new Int32Array(size * size).fill(none)
  for (let node = 0; node < size; node += 1) longest[node * size + node] = 0
  return { size, longest }
}

/** Notes that x_to − x_from is at least `seconds`, before the matrix is closed. */
export function note({ size, longest }: Paths, from: number, to: number, seconds: number): void {
  const at = from * size + to
  if (seconds > (longest[at] ?? none)) longest[at] = seconds
}

/**
 * Closes the matrix (Floyd and Warshall); false at the first cycle that would have to be longer than itself: no times fit.
 */
export function close({ size, longest }: Paths): boolean {
  for (let over = 0; over < size; over += 1) {
    for (let from = 0; from < size; from += 1) {
      const first = longest[from * size + over] as number
      if (first < isNone) continue
      const row = from * size
      const via = over * size
      for (let to = 0; to < size; to += 1) {
        const second = longest[via + to] as number
        if (second < isNone) continue
        if (first + second > (longest[row + to] as number)) longest[row + to] = first + second
      }
    }
    for (let node = 0; node < size; node += 1)
      if ((longest[node * size + node] as number) > 0) return false
  }
  return true
}

/** Adds one demand to a closed matrix and keeps it closed, in one pass over all pairs; false when it cannot be met. */
export function demand(paths: Paths, from: number, to: number, seconds: number): boolean {
  const { size, longest } = paths
  if (seconds <= (longest[from * size + to] as number)) return true
  const back = longest[to * size + from] as number
  if (back > isNone && back + seconds > 0) return false
  for (let one = 0; one < size; one += 1) {
    const before = longest[one * size + from] as number
    if (before < isNone) continue
    const reach = before + seconds
    const row = one * size
    if (reach <= (longest[row + to] as number)) continue
    const via = to * size
    for (let other = 0; other < size; other += 1) {
      const after = longest[via + other] as number
      if (after > isNone && reach + after > (longest[row + other] as number))
        longest[row + other] = reach + after
    }
  }
  return true
}

/** How many seconds are left if `to` must come so long after `from`: below zero when it cannot. */
export function roomFor(
  { size, longest }: Paths,
  { from, to, seconds }: { from: number; to: number; seconds: number },
): number {
  const back = longest[to * size + from] as number
  return back < isNone ? 1_000_000_000 : -back - seconds
}
