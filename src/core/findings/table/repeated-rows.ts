import type { CsvColumn } from './csv-columns.ts'
import type { CsvGrid } from './csv-grid.ts'
import type { CsvRole } from './csv-role.ts'
import type { CsvTrouble } from './csv-trouble.ts'
import { isMissing } from './table-number.ts'

export interface Repeats {
  /** Rows that repeat an earlier one, and the first of them with the one it repeats. */
  count: number
  row: number
  first: number
}

/**
 * One question for all rows that stand twice: how many there are, and a column that likely tells them apart with what it
 * would be (a judge is a taster, a day a session, a loaf a replicate). `keyOf` names what a row is now.
 */
export function repeatedTrouble(
  grid: CsvGrid,
  columns: readonly CsvColumn[],
  { count, row, first }: Repeats,
  keyOf: (cells: readonly string[]) => string,
): CsvTrouble {
  const likely = likelyColumn(grid, columns, keyOf, grid.rows.length - count)
  return {
    ...{ reason: 'row-twice', row, column: likely?.heading ?? null, first, count },
    ...(likely ? { role: likely.role } : {}),
  }
}

const meant: readonly [CsvRole, RegExp][] = [
  ['taster', /\b(judge|taster|panel|assessor|person|name|who\b|wer\b|prüfer|verkoster)/i],
  ['session', /\b(day|date|session|block|week|evening|datum|tag\b|sitzung)/i],
  ['flight', /\b(flight|round|run\b|serving|gang\b|runde)/i],
  [
    'replicate',
    /\b(rep|loaf|piece|batch|dough|bun\b|sample|unit|id\b|nr\b|no\b|wdh|wiederholung|laib|teig)/i,
  ],
]

function likelyColumn(
  grid: CsvGrid,
  columns: readonly CsvColumn[],
  keyOf: (cells: readonly string[]) => string,
  apartNow: number,
): { heading: string; role: CsvRole } | null {
  const open = columns.flatMap((column) => {
    const isOpen = ['response', 'text', 'ignore', 'batch', 'piece', 'position'].includes(
      column.role,
    )
    const role = meant.find(([, words]) => words.test(column.heading.replaceAll('_', ' ')))?.[0]
    // Scores may tell rows apart by chance; a column of numbers counts only where its heading says so.
    const rank = role ? 2 : column.role === 'response' ? 0 : 1
    return isOpen && rank > 0 ? [{ ...column, meaning: role ?? ('replicate' as const), rank }] : []
  })
  const inTurn = open
    .toSorted((a, b) => b.rank - a.rank)
    .map((column) => ({ ...column, rows: toldApart(grid, column.index, keyOf) }))
  const whole = inTurn.find(({ rows }) => rows === grid.rows.length)
  // Day and judge may do it together: then the one that tells most apart is asked about first.
  const [most] = inTurn.filter(({ rank }) => rank === 2).toSorted((a, b) => b.rows - a.rows)
  const found = whole ?? (most && most.rows > apartNow ? most : undefined)
  return found ? { heading: found.heading, role: found.meaning } : null
}

/** How many rows would be left apart with this column beside what names a row now; 0 where a cell is blank. */
function toldApart(
  { rows }: CsvGrid,
  index: number,
  keyOf: (cells: readonly string[]) => string,
): number {
  const seen = new Set<string>()
  for (const { cells } of rows) {
    const cell = cells[index] ?? ''
    if (isMissing(cell)) return 0
    seen.add(`${keyOf(cells)}\u0000${cell}`)
  }
  return seen.size
}
