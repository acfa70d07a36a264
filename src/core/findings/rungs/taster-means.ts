import type { Cells } from './cells.ts'

/** Mean score of each taster at each level over sessions and flights; null where a taster has none. */
export type TasterMeans = (number | null)[][]

/** Taster by level means: what Friedman's test, the pieces rung and the tasters' own curves stand on. */
export function tasterMeans(cells: Cells, levels: number): TasterMeans {
  const sums = cells.tasters.map(() => new Array<number>(levels).fill(0))
  const counts = cells.tasters.map(() => new Array<number>(levels).fill(0))
  for (let row = 0; row < cells.y.length; row += 1) {
    const taster = cells.taster[row] as number
    const level = cells.level[row] as number
    const sum = sums[taster]
    const count = counts[taster]
    if (!sum || !count) continue
    sum[level] = (sum[level] as number) + (cells.y[row] as number)
    count[level] = (count[level] as number) + 1
  }
  return sums.map((sum, taster) =>
    sum.map((total, level) => {
      const n = counts[taster]?.[level] ?? 0
      return n === 0 ? null : total / n
    }),
  )
}
