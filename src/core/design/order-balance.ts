/** How evenly a set of orders treats its lines, as plain counts. Lines and positions count from 0. */
export interface OrderBalance {
  /** [line][position]: how often the line stood there. */
  timesAt: number[][]
  leastAt: number
  mostAt: number
  /** [before][after]: how often the one came directly before the other. */
  timesBefore: number[][]
  leastBefore: number
  mostBefore: number
  /** Mean position of each line, from 1; all equal when a steady drift over the day cancels. */
  meanPositions: number[]
  /** True when every line stood at every position, and directly after every other line, equally often. */
  even: boolean
}

const grid = (size: number) => Array.from({ length: size }, () => new Array<number>(size).fill(0))

/**
 * Counts how often each line stood at each position and directly before each other line, over all the orders of a trial.
 * An order may leave lines out; what it leaves out is not counted.
 */
export function orderBalance(orders: readonly (readonly number[])[], lines: number): OrderBalance {
  const timesAt = grid(lines)
  const timesBefore = grid(lines)
  for (const order of orders)
    order.forEach((line, position) => {
      add(timesAt, line, position)
      const before = order[position - 1]
      if (before !== undefined) add(timesBefore, before, line)
    })
  const at = timesAt.flat()
  const pairs = timesBefore.flatMap((row, before) => row.filter((_, after) => after !== before))
  const [leastAt, mostAt] = ends(at)
  const [leastBefore, mostBefore] = ends(pairs)
  return {
    timesAt,
    leastAt,
    mostAt,
    timesBefore,
    leastBefore,
    mostBefore,
    meanPositions: timesAt.map(meanPosition),
    even: leastAt === mostAt && leastBefore === mostBefore,
  }
}

function add(counts: number[][], row: number, column: number): void {
  const line = counts[row]
  if (!line || column >= line.length) throw new Error(`no line ${row} at ${column}`)
  line[column] = (line[column] ?? 0) + 1
}

const ends = (counts: number[]): [number, number] =>
  counts.length === 0 ? [0, 0] : [Math.min(...counts), Math.max(...counts)]

function meanPosition(times: number[]): number {
  const total = times.reduce((sum, count) => sum + count, 0)
  if (total === 0) return 0
  return times.reduce((sum, count, position) => sum + count * (position + 1), 0) / total
}
