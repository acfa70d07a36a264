import type { CsvColumn } from './csv-columns.ts'
import type { CsvGrid } from './csv-grid.ts'
import type { CsvTrouble } from './csv-trouble.ts'
import { isMissing, unitOfAll } from './table-number.ts'

/** Columns whose cells are names: two spellings of one name would make two of it. */
const named: readonly CsvColumn['role'][] = ['taster', 'level', 'session']

/**
 * Names that differ in capitals or spaces alone, such as A and a: asked about once a column, or made one by the spelling that
 * stands first. Measured levels are read as numbers and never alike.
 */
export function alikeNames(
  grid: CsvGrid,
  columns: readonly CsvColumn[],
  answer: 'one' | 'two' | undefined,
): { grid: CsvGrid; troubles: CsvTrouble[] } {
  if (answer === 'two') return { grid, troubles: [] }
  const troubles: CsvTrouble[] = []
  let made = grid
  for (const { index, heading, role } of columns) {
    if (!named.includes(role)) continue
    const first = new Map<string, string>()
    const other = new Map<string, string>()
    for (const { cells } of grid.rows) {
      const cell = cells[index] ?? ''
      if (isMissing(cell)) continue
      const key = cell.toLowerCase().replace(/\s+/g, '')
      const known = first.get(key)
      if (known === undefined) first.set(key, cell)
      else if (known !== cell) other.set(cell, known)
    }
    if (other.size === 0) continue
    if (role === 'level' && unitOfAll([...first.values(), ...other.keys()])) continue
    const [[again, before]] = [...other] as [[string, string]]
    if (answer === undefined)
      troubles.push({
        ...{ reason: 'alike-names', row: null, column: heading },
        ...{ text: `${before}” and “${again}`, count: other.size },
      })
    else made = withNames(made, index, other)
  }
  return { grid: made, troubles }
}

function withNames(grid: CsvGrid, index: number, spelled: ReadonlyMap<string, string>): CsvGrid {
  const rows = grid.rows.map(({ number, cells }) => {
    const name = spelled.get(cells[index] ?? '')
    return name === undefined ? { number, cells } : { number, cells: cells.with(index, name) }
  })
  return { ...grid, rows }
}
