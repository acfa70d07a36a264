export interface StackedTab {
  leftPixels: number
  /** 0 stands on the axis, 1 above it, and so on. */
  row: number
}

const gapPixels = 3

/**
 * Where the tabs of a rail stand: each centred over its place on the axis, held inside the rail, and lifted to the
 * lowest row in which it overlaps no tab to its left. `tabs` come in the order of the axis, `at` from 0 to 1.
 */
export function stackedTabs(
  tabs: readonly { at: number; widthPixels: number }[],
  railPixels: number,
): StackedTab[] {
  const endsOfRows: number[] = []
  return tabs.map(({ at, widthPixels }) => {
    const wanted = at * railPixels - widthPixels / 2
    const leftPixels = Math.max(0, Math.min(wanted, railPixels - widthPixels))
    const free = endsOfRows.findIndex((end) => end + gapPixels <= leftPixels)
    const row = free === -1 ? endsOfRows.length : free
    endsOfRows[row] = leftPixels + widthPixels
    return { leftPixels, row }
  })
}
