import { shuffled } from './chance.ts'
import { type OrdersWanted, rowsThatComplete } from './serving-orders.ts'
import { williamsDesign } from './williams.ts'

/**
 * Draws the orders in which tasters get their servings: square after square of the Williams design (one square for an even
 * number of lines, the square and its mirror for an odd one), so that over all tasters and sessions each line stands at each
 * position equally often or once more. A square that earlier sessions left unfinished is finished first. Of the rows still
 * open those are taken that bring mean positions, then the times after each other line, closest; among equals chance decides.
 */
export function tasterOrders({ chance, labelling, count, earlier }: OrdersWanted): number[][] {
  const lines = labelling.length
  const rows = williamsDesign(lines).map((row) => row.map((symbol) => labelling[symbol] ?? symbol))
  const squares = shuffled(
    chance,
    rows.length > lines ? [rows.slice(0, lines), rows.slice(lines)] : [rows],
  ).map((square) => shuffled(chance, square))
  const used = new Map<string, number>()
  const use = (row: readonly number[]) => used.set(row.join(), times(row) + 1)
  const times = (row: readonly number[]) => used.get(row.join()) ?? 0
  for (const row of earlier) use(row)
  const drawn: number[][] = []
  while (drawn.length < count) {
    const open = openRows(squares, times)
    const taken = rowsThatComplete(open, count - drawn.length, [...earlier, ...drawn], lines)
    for (const row of taken) {
      use(row)
      drawn.push([...row])
    }
  }
  return shuffled(chance, drawn)
}

/** The rows still to come of the square in work; of all squares whole, of the one that was used least. */
function openRows(
  squares: readonly number[][][],
  times: (row: readonly number[]) => number,
): number[][] {
  const of = squares.map((square) => {
    const each = square.map(times)
    const least = Math.min(...each)
    return {
      least,
      whole: Math.max(...each) === least,
      open: square.filter((_, at) => each[at] === least),
    }
  })
  const inWork = of.filter(({ whole }) => !whole)
  const [next] = (inWork.length > 0 ? inWork : of).toSorted((one, other) => one.least - other.least)
  return next?.open ?? []
}
