import { unitMeans } from '@/core/statistics/block-model/unit-means.ts'
import { blockedLeastSquares } from '@/core/statistics/least-squares/blocked-least-squares.ts'
import { indicator } from '@/core/statistics/least-squares/indicator.ts'
import type { Cells } from './cells.ts'

/** Mean score of each taster at each level over sessions and flights; null where a taster has none. */
export type TasterMeans = (number | null)[][]

/**
 * Taster by level means freed from the day: what Friedman's test, the pieces rung and the tasters' own curves stand on. Each taster's
 * own least squares of score ~ session + level give level + mean session, so that a level that failed on a bad day is not lifted; plain
 * means where a taster had every level equally often each day. A taster whose days and levels are not connected is
 * left out. Worked out by simulation for this project.
 */
export function tasterMeans(cells: Cells, levels: number): TasterMeans {
  return rowsByTaster(cells).map((rows) => {
    const pattern = patternOf(cells, rows, levels)
    return pattern.balanced ? plainMeans(cells, rows, levels) : freedMeans(cells, rows, levels)
  })
}

/**
 * How much wider the difference of levels a and b is than the average pair, as variances over their mean: 1 for all where
 * every taster is balanced (then null). From the patterns of the tasters' own fits, averaged over tasters who had both.
 */
export function pairVariances(cells: Cells, levels: number): number[][] | null {
  const rows = rowsByTaster(cells)
  if (rows.every((each) => patternOf(cells, each, levels).balanced)) return null
  const sums = square(levels)
  const counts = square(levels)
  for (const each of rows) addPattern(cells, each, levels, sums, counts)
  const found = sums.map((row, a) =>
    row.map((sum, b) => (counts[a]?.[b] ? sum / (counts[a]?.[b] as number) : 0)),
  )
  const known = found.flatMap((row, a) => row.filter((value, b) => b > a && value > 0))
  const mean = known.reduce((sum, value) => sum + value, 0) / known.length
  return found.map((row) => row.map((value) => (value > 0 ? value / mean : 1)))
}

const square = (size: number): number[][] =>
  Array.from({ length: size }, () => new Array<number>(size).fill(0))

function rowsByTaster(cells: Cells): number[][] {
  const rows: number[][] = cells.tasters.map(() => [])
  for (let row = 0; row < cells.y.length; row += 1) rows[cells.taster[row] as number]?.push(row)
  return rows
}

/** Balanced: on each of their days the taster had each of their levels equally often. */
function patternOf(cells: Cells, rows: readonly number[], levels: number) {
  const counts = new Map<number, Int32Array>()
  for (const row of rows) {
    const session = cells.session[row] as number
    const at = counts.get(session) ?? new Int32Array(levels)
    counts.set(session, at)
    const level = cells.level[row] as number
    at[level] = (at[level] as number) + 1
  }
  const [first, ...rest] = [...counts.values()]
  const balanced = rest.every((each) => each.every((count, level) => count === first?.[level]))
  return { balanced }
}

function plainMeans(cells: Cells, rows: readonly number[], levels: number): (number | null)[] {
  const sums = new Float64Array(levels)
  const counts = new Int32Array(levels)
  for (const row of rows) {
    const level = cells.level[row] as number
    sums[level] = (sums[level] as number) + (cells.y[row] as number)
    counts[level] = (counts[level] as number) + 1
  }
  return Array.from(sums, (sum, level) =>
    counts[level] === 0 ? null : sum / (counts[level] as number),
  )
}

function freedMeans(cells: Cells, rows: readonly number[], levels: number): (number | null)[] {
  const sessions = numbered(rows.map((row) => cells.session[row] as number))
  const { means, groupCount } = unitMeans({
    y: rows.map((row) => cells.y[row] as number),
    taster: sessions.codes,
    unit: rows.map((row) => cells.level[row] as number),
    tasterCount: sessions.count,
    unitCount: levels,
  })
  return groupCount > 1 ? means.map(() => null) : means
}

/** Variances of level differences of one taster's fit, over the residual's, added to the sums. */
function addPattern(
  cells: Cells,
  rows: readonly number[],
  levels: number,
  sums: number[][],
  counts: number[][],
): void {
  const sessions = numbered(rows.map((row) => cells.session[row] as number))
  const had = Array.from({ length: levels }, (_, level) => level).filter((level) =>
    rows.some((row) => cells.level[row] === level),
  )
  const level = Int32Array.from(rows, (row) => cells.level[row] as number)
  const fitted = blockedLeastSquares(
    {
      y: new Float64Array(rows.length),
      block: sessions.codes,
      weight: new Float64Array(rows.length).fill(1),
      blockCount: sessions.count,
    },
    had.slice(1).map((one) => indicator(level, one)),
  )
  if (!fitted.ok) return
  const c = (i: number, j: number) =>
    i === 0 || j === 0 ? 0 : (fitted.fit.unscaled[i - 1]?.[j - 1] as number)
  for (const [i, a] of had.entries())
    for (const [j, b] of had.entries()) {
      if (i === j) continue
      const [sumRow, countRow] = [sums[a] as number[], counts[a] as number[]]
      sumRow[b] = (sumRow[b] as number) + c(i, i) - 2 * c(i, j) + c(j, j)
      countRow[b] = (countRow[b] as number) + 1
    }
}

function numbered(keys: readonly number[]): { codes: Int32Array; count: number } {
  const codes = new Map<number, number>()
  const coded = Int32Array.from(keys, (key) => {
    const known = codes.get(key) ?? codes.size
    codes.set(key, known)
    return known
  })
  return { codes: coded, count: codes.size }
}
