const gapPixels = 3

/**
 * Where the tabs of one side of a rail stand: each centred over its place, and where they would touch or leave the rail,
 * moved as little as that takes (least squares, by pooling neighbours that touch; Ayer and others 1955, from memory).
 * `tabs` come in the order of the axis, `at` from 0 to 1; gives each one's left end in pixels. Tabs that together are
 * wider than the rail are the caller's to make narrower.
 */
export function apartTabs(
  tabs: readonly { at: number; widthPixels: number }[],
  railPixels: number,
): number[] {
  // Without their own room and that of all before them the tabs may share a place, but not change their order.
  let roomBefore = 0
  const wanted = tabs.map(({ at, widthPixels }) => {
    const left = at * railPixels - widthPixels / 2 - roomBefore
    roomBefore += widthPixels + gapPixels
    return left
  })
  const most = Math.max(0, railPixels - (roomBefore - gapPixels))
  const pools: { sum: number; count: number }[] = []
  for (const left of wanted) {
    pools.push({ sum: left, count: 1 })
    while (pools.length > 1) {
      const [before, last] = pools.slice(-2)
      if (!before || !last || before.sum / before.count <= last.sum / last.count) break
      pools.splice(-2, 2, { sum: before.sum + last.sum, count: before.count + last.count })
    }
  }
  const even = pools.flatMap(({ sum, count }) => Array<number>(count).fill(sum / count))
  let room = 0
  return even.map((left, index) => {
    const placed = Math.min(Math.max(left, 0), most) + room
    room += (tabs[index]?.widthPixels ?? 0) + gapPixels
    return placed
  })
}
