import { type Chance, shuffled } from './chance.ts'
import { williamsDesign } from './williams.ts'

export interface OrdersWanted {
  chance: Chance
  /** A random order of the lines, kept for the whole trial, so that sessions complete one another's design. */
  labelling: readonly number[]
  /** How many orders: flights of a session, or tasters. */
  count: number
  /** Orders already used in this trial, which the new ones balance. */
  earlier: readonly (readonly number[])[]
}

type Order = readonly number[]

/** Above this many choices of rows the best is searched by exchange instead of by trying all. */
const mostTried = 1000

/**
 * Draws the orders in which the lines are baked or tasted: rows of a Williams design, whole designs as often as they fit, and
 * for the rest those rows that, together with the earlier orders, bring the lines' mean positions closest, then the times at
 * each position, then the times after each other line. Among equally good rows chance decides.
 */
export function servingOrders({ chance, labelling, count, earlier }: OrdersWanted): number[][] {
  const rows = shuffled(
    chance,
    williamsDesign(labelling.length).map((row) => row.map((symbol) => labelling[symbol] ?? symbol)),
  )
  const whole = Array.from({ length: Math.floor(count / rows.length) }, () => rows).flat()
  const rest = count % rows.length
  const chosen = rowsThatComplete(rows, rest, [...earlier, ...whole], labelling.length)
  return shuffled(chance, [...whole, ...chosen]).map((row) => [...row])
}

/**
 * Of `rows` those `count` that, together with the `earlier` orders, bring the lines' mean positions closest, then the times at
 * each position, then the times after each other line; all of them where no more are there.
 */
export function rowsThatComplete<Row extends readonly number[]>(
  rows: Row[],
  count: number,
  earlier: readonly (readonly number[])[],
  lines: number,
): Row[] {
  if (rows.length <= count) return rows
  const before = countsOf(lines, earlier)
  return choices(rows.length, count) <= mostTried
    ? bestOfAll(rows, count, before)
    : byExchange(rows, count, before)
}

function choices(of: number, take: number): number {
  let ways = 1
  for (let one = 1; one <= take; one += 1) ways = (ways * (of - take + one)) / one
  return ways
}

function bestOfAll<Row extends Order>(rows: Row[], take: number, before: Counts): Row[] {
  let best: Row[] = []
  let least: number[] | null = null
  for (const taken of subsets(rows, take)) {
    const badness = unevenness(before, taken)
    if (least && !isLess(badness, least)) continue
    best = taken
    least = badness
  }
  return best
}

function* subsets<Row>(rows: Row[], take: number): Generator<Row[]> {
  if (take === 0) return yield []
  for (const [index, row] of rows.slice(0, rows.length - take + 1).entries())
    for (const rest of subsets(rows.slice(index + 1), take - 1)) yield [row, ...rest]
}

function byExchange<Row extends Order>(rows: Row[], take: number, before: Counts): Row[] {
  let taken = rows.slice(0, take)
  let badness = unevenness(before, taken)
  for (let improved = true; improved; ) {
    improved = false
    for (const out of taken)
      for (const into of rows) {
        if (taken.includes(into) || !taken.includes(out)) continue
        const tried = taken.map((row) => (row === out ? into : row))
        const triedBadness = unevenness(before, tried)
        if (!isLess(triedBadness, badness)) continue
        taken = tried
        badness = triedBadness
        improved = true
      }
  }
  return taken
}

interface Counts {
  lines: number
  /** By line: the sum of its positions. */
  sums: Float64Array
  /** By line × lines + position, and by line before × lines + line after. */
  at: Float64Array
  after: Float64Array
}

function countsOf(lines: number, orders: readonly Order[], from?: Counts): Counts {
  const sums = from ? from.sums.slice() : new Float64Array(lines)
  const at = from ? from.at.slice() : new Float64Array(lines * lines)
  const after = from ? from.after.slice() : new Float64Array(lines * lines)
  for (const order of orders)
    order.forEach((line, position) => {
      sums[line] = (sums[line] ?? 0) + position
      bump(at, line * lines + position)
      const previous = order[position - 1]
      if (previous !== undefined) bump(after, previous * lines + line)
    })
  return { lines, sums, at, after }
}

/** Squares of the position sums' deviations, of the counts at each position, and of the counts after each other line. */
function unevenness(before: Counts, taken: readonly Order[]): number[] {
  const { lines, sums, at, after } = countsOf(before.lines, taken, before)
  const mean = sums.reduce((total, sum) => total + sum, 0) / Math.max(1, lines)
  return [squares(sums.map((sum) => sum - mean)), squares(at), squares(after)]
}

const bump = (counts: Float64Array, index: number) => {
  counts[index] = (counts[index] ?? 0) + 1
}
const squares = (values: Float64Array) => values.reduce((total, value) => total + value * value, 0)

function isLess(one: number[], other: number[]): boolean {
  const at = one.findIndex((value, index) => Math.abs(value - (other[index] ?? 0)) > 1e-9)
  return at >= 0 && (one[at] ?? 0) < (other[at] ?? 0)
}
