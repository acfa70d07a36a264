import type { CsvColumn } from './csv-columns.ts'
import type { CsvGrid } from './csv-grid.ts'
import { csvLevels } from './csv-levels.ts'
import { csvNumber } from './csv-number.ts'
import { type CsvRole, csvRoles } from './csv-role.ts'
import type { CsvTrouble } from './csv-trouble.ts'
import { type Repeats, repeatedTrouble } from './repeated-rows.ts'
import type { LevelName, ScoreRow } from './score-table.ts'
import { inReach, isMissing } from './table-number.ts'

const separator = '\u0000'

export interface CsvReading {
  unit: 'batch' | 'piece'
  /** Levels are names, whatever they look like: product codes. */
  choice: boolean
  /** Rows that stand twice are doughs or loaves made again, each a unit of its own. */
  replicates: boolean
}

export interface CsvBody {
  levels: LevelName[]
  unitOfMeasure: string
  rows: ScoreRow[]
  troubles: CsvTrouble[]
}

/**
 * Rows of a readable table with their levels in order, and every cell that cannot be read. A row is session, flight,
 * level, taster and replicate; rows that stand twice are one question, whatever else they name. A batch is session and letter,
 * without letters session, level and replicate; a piece without a name is the level's one in its flight. A row without a
 * taster, in a table that has tasters, is the baker's own measurement: it may fill only what no taster scored, and where its
 * flight is blank too it is of the dough as a whole and belongs to no flight.
 */
export function csvRows(
  grid: CsvGrid,
  columns: readonly CsvColumn[],
  { unit, choice, replicates }: CsvReading,
): CsvBody {
  const troubles: CsvTrouble[] = []
  const at = new Map(columns.map((column) => [column.role, column]))
  const responses = columns.filter((column) => column.role === 'response')
  const places = Object.fromEntries(
    csvRoles.map((role) => [role, at.get(role)?.index ?? -1]),
  ) as Record<CsvRole, number>
  const text = (cells: readonly string[], role: CsvRole) => {
    const cell = cells[places[role]] ?? ''
    // Initials may be NA, a level or a session hardly.
    return (role === 'taster' ? cell === '-' || cell === '–' : isMissing(cell)) ? '' : cell
  }
  const number = (cells: readonly string[], column: CsvColumn | undefined, row: number) => {
    const cell = column ? (cells[column.index] ?? '') : ''
    if (!column || isMissing(cell)) return null
    const value = csvNumber(cell)
    if (value !== null && inReach(value)) return value
    const reason = value === null ? 'unreadable-number' : 'out-of-reach'
    troubles.push({ reason, row, column: column.heading, text: cell })
    return null
  }
  const levelColumn = at.get('level')?.index ?? -1
  const names = csvLevels(cellsIn(grid, levelColumn), choice)
  const scored = responses.filter(({ index }) =>
    grid.rows.some(({ cells }) => !isMissing(cells[index] ?? '') && text(cells, 'taster') !== ''),
  )
  const measured = (cells: readonly string[]) =>
    at.has('taster') &&
    text(cells, 'taster') === '' &&
    scored.every(({ index }) => isMissing(cells[index] ?? ''))
  const seen = new Map<string, number>()
  const times = new Map<string, number>()
  const owners = new Map<string, { level: number; row: number }>()
  const owned = (key: string, level: number, row: number, reason: CsvTrouble['reason']) => {
    const owner = owners.get(key)
    if (!owner) owners.set(key, { level, row })
    else if (owner.level !== level) {
      const column = at.get(reason === 'batch-two-levels' ? 'batch' : 'piece')?.heading ?? null
      troubles.push({ reason, row, column, first: owner.row })
    }
  }
  const partsOf = (cells: readonly string[]) => ({
    session: at.has('session') ? text(cells, 'session') : '1',
    flight: at.has('flight') ? text(cells, 'flight') : '1',
    taster: text(cells, 'taster'),
    level: names.indexOf(cells[levelColumn] ?? ''),
    replicate: text(cells, 'replicate'),
  })
  const keyOf = ({ session, flight, taster, level, replicate }: ReturnType<typeof partsOf>) =>
    `${session}${separator}${flight}${separator}${level}${separator}${taster}${separator}${replicate}`
  const once = keptOnce()
  let repeats: Repeats | null = null
  const rows = grid.rows.map(({ number: row, cells }): ScoreRow => {
    for (const [role, reason] of needed) {
      const column = at.get(role)
      const blank = column !== undefined && text(cells, role) === ''
      const mayBe = role === 'taster' || role === 'flight' ? measured(cells) : false
      if (blank && !mayBe) troubles.push({ reason, row, column: column.heading })
    }
    const parts = partsOf(cells)
    const { session, flight, taster, level, replicate } = parts
    let again = replicate
    if (level >= 0) {
      const key = keyOf(parts)
      const first = seen.get(key)
      if (first === undefined) seen.set(key, row)
      else if (replicates) {
        times.set(key, (times.get(key) ?? 1) + 1)
        again = `${replicate} ${times.get(key)}`
      } else repeats = { row, first, ...repeats, count: (repeats?.count ?? 0) + 1 }
    }
    const letter = text(cells, 'batch')
    const own = again === '' ? `level ${level}` : `level ${level}, ${again}`
    const batch = once([session, letter && again === '' ? letter : `${letter} ${own}`.trim()])
    const named = text(cells, 'piece')
    const piece = once([session, named ? letter : flight, named || own])
    if (level >= 0 && letter && unit === 'batch')
      owned(`batch ${batch}`, level, row, 'batch-two-levels')
    if (level >= 0 && named) owned(`piece ${piece}`, level, row, 'piece-two-levels')
    return {
      ...{ session, flight: once([session, flight]), batch, piece, level },
      taster: taster || null,
      position: number(cells, at.get('position'), row),
      minutes: number(cells, at.get('minutes'), row),
      handled: null,
      values: responses.map((column) => number(cells, column, row)),
    }
  })
  if (repeats)
    troubles.push(repeatedTrouble(grid, columns, repeats, (cells) => keyOf(partsOf(cells))))
  return { levels: names.levels, unitOfMeasure: names.unitOfMeasure, rows, troubles }
}

const needed = [
  ['level', 'level-missing'],
  ['session', 'session-missing'],
  ['flight', 'flight-missing'],
  ['taster', 'taster-missing'],
  ['replicate', 'replicate-missing'],
] as const

function* cellsIn({ rows }: CsvGrid, index: number): Generator<string> {
  for (const { cells } of rows) yield cells[index] ?? ''
}

/** Keys that many rows share are kept once. */
function keptOnce() {
  const kept = new Map<string, string>()
  return (parts: readonly string[]): string => {
    const key = parts.join(separator)
    const known = kept.get(key)
    if (known !== undefined) return known
    kept.set(key, key)
    return key
  }
}
