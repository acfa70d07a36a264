import type { CsvGrid } from './csv-grid.ts'
import { csvNumber } from './csv-number.ts'
import type { CsvTrouble } from './csv-trouble.ts'

/** What a column can stand for, besides a response. */
export const csvRoles = [
  'session',
  'flight',
  'batch',
  'piece',
  'level',
  'taster',
  'position',
  'minutes',
] as const
export type CsvRole = (typeof csvRoles)[number]

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
 * one of numbers; the rest of its cells are then troubles. Two columns of one meaning or heading are trouble.
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
  const columns = grid.header.map((heading, index): CsvColumn => {
    const key = heading.toLowerCase()
    if (heading !== '' && seen.has(key)) {
      troubles.push({ reason: 'column-twice', row: 1, column: heading })
    }
    seen.add(key)
    const named = csvRoles.find((role) => role === key && !given.has(role))
    const role = assigned.get(key) ?? named ?? (isNumeric(grid, index) ? 'response' : 'text')
    return { index, heading, role: heading === '' ? 'text' : role }
  })
  for (const role of csvRoles) {
    const twice = columns.filter((column) => column.role === role)[1]
    if (twice) troubles.push({ reason: 'column-twice', row: 1, column: twice.heading })
  }
  return { columns, troubles: distinct(troubles) }
}

function isNumeric(grid: CsvGrid, index: number): boolean {
  let filled = 0
  let numbers = 0
  for (const { cells } of grid.rows) {
    const cell = cells[index] ?? ''
    if (cell === '') continue
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
