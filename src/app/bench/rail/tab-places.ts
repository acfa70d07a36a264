/** Where the tabs of the bench's rail stand, in pixels from its left end. */
export interface TabPlaces {
  lefts: number[]
  widthPixels: number
  heightPixels: number
}

const tabPixels = { most: 84, least: 52 }
const gapPixels = 4
const highPixels = 64

/**
 * Tabs as near to their places on the beam (0 to 1, rising) as their widths allow, each at least 52 px wide; null where they do not fit
 * beside each other: then they stand in rows.
 */
export function tabPlaces(at: readonly number[], railPixels: number): TabPlaces | null {
  const count = Math.max(1, at.length)
  const room = (railPixels - gapPixels * (count - 1)) / count
  if (room < tabPixels.least) return null
  const widthPixels = Math.min(railPixels < 480 ? 64 : tabPixels.most, room)
  const lefts: number[] = []
  for (const place of at) {
    const wanted = place * railPixels - widthPixels / 2
    const before = lefts.at(-1)
    lefts.push(Math.max(0, wanted, before === undefined ? 0 : before + widthPixels + gapPixels))
  }
  let end = railPixels
  for (let index = lefts.length - 1; index >= 0; index -= 1) {
    const left = Math.min(lefts[index] ?? 0, end - widthPixels)
    lefts[index] = left
    end = left - gapPixels
  }
  return { lefts, widthPixels, heightPixels: highPixels }
}
