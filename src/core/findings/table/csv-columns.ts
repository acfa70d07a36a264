import type { CsvGrid } from './csv-grid.ts'
import { csvNumber } from './csv-number.ts'
import { type CsvRole, csvRoles } from './csv-role.ts'
import type { CsvTrouble } from './csv-trouble.ts'
import { isMissing } from './table-number.ts'

/** What a person says a column is, when its heading does not say it. */
export interface CsvAssignment {
  role: CsvRole | 'response' | 'ignore'
  column: string
}

/** How one column was read: `text` columns hold no numbers and are left out like ignored ones. */
export interface CsvColumn {
  index: number
  heading: string
  role: CsvRole | 'response' | 'ignore' | 'text'
}

/**
 * Decides what every column is: by assignment first, then by its heading in any case, then a column of numbers is a
 * response and a column of words is left out. A column in which at least half of the filled cells are numbers counts as
 * one of numbers; the rest of its cells are then troubles. A first column without a heading holds the tasters, unless it
 * merely counts the rows. Two columns of one meaning or heading are trouble.
 */
export function csvColumns(
  grid: CsvGrid,
  assignments: readonly CsvAssignment[],
): { columns: CsvColumn[]; troubles: CsvTrouble[] } {
  const troubles: CsvTrouble[] = []
  const assigned = new Map<string, CsvAssignment['role']>()
  for (const { role, column } of assignments) {
    const key = column.trim().toLowerCase()
    if (grid.header.some((heading) => heading.toLowerCase() === key)) assigned.set(key, role)
    else troubles.push({ reason: 'no-such-column', row: null, column })
  }
  const given = new Set(assigned.values())
  const seen = new Set<string>()
  const unnamed = new Set(grid.unnamed)
  const columns = grid.header.map((heading, index): CsvColumn => {
    const key = heading.toLowerCase()
    if (seen.has(key)) troubles.push({ reason: 'column-twice', row: 1, column: heading })
    seen.add(key)
    const own = assigned.get(key)
    if (own !== undefined) return { index, heading, role: own }
    if (unnamed.has(index)) return { index, heading, role: 'text' }
    const named = csvRoles.find((role) => role === key && !given.has(role))
    return { index, heading, role: named ?? (isNumeric(grid, index) ? 'response' : 'text') }
  })
  const [first] = columns
  const has = (role: CsvRole) => columns.some((column) => column.role === role)
  if (first?.role === 'text' && unnamed.has(0) && !has('taster') && !countsRows(grid, has('level')))
    first.role = 'taster'
  for (const role of csvRoles) {
    const twice = columns.filter((column) => column.role === role)[1]
    if (twice) troubles.push({ reason: 'column-twice', row: 1, column: twice.heading })
  }
  return { columns, troubles: distinct(troubles) }
}

/** Whether the first column is the row numbers that a program wrote beside a long table, or empty. */
function countsRows({ rows }: CsvGrid, long: boolean): boolean {
  if (rows.every(({ cells }) => isMissing(cells[0] ?? ''))) return true
  return long && rows.every(({ cells }, at) => cells[0] === `${at + 1}`)
}

function isNumeric(grid: CsvGrid, index: number): boolean {
  let filled = 0
  let numbers = 0
  for (const { cells } of grid.rows) {
    const cell = cells[index] ?? ''
    if (isMissing(cell)) continue
    filled += 1
    if (csvNumber(cell) !== null) numbers += 1
  }
  return filled > 0 && numbers * 2 >= filled
}

function distinct(troubles: CsvTrouble[]): CsvTrouble[] {
  const seen = new Set<string>()
  return troubles.filter((trouble) => {
    const key = `${trouble.reason}\u0000${trouble.column}`
    if (seen.has(key)) return false
    seen.add(key)
    return true
  })
}
