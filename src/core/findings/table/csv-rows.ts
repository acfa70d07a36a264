import type { LevelName } from '@/core/findings/rungs/rung-shape.ts'
import type { CsvColumn, CsvRole } from './csv-columns.ts'
import type { CsvGrid } from './csv-grid.ts'
import { csvNumber } from './csv-number.ts'
import type { CsvTrouble } from './csv-trouble.ts'
import type { ScoreRow } from './score-table.ts'

const separator = '\u0000'

/**
 * Rows of a readable table with their levels in order, and every cell that cannot be read. A row is session, flight,
 * level and taster, and a second one is trouble whatever else it names. A batch is session and letter, without letters
 * session and level; a piece without a name is the level's one in its flight. A row without a taster, in a table that has
 * tasters, is the baker's own measurement: it may fill only what no taster scored, and where its flight is blank too it is
 * of the dough as a whole and belongs to no flight.
 */
export function csvRows(
  grid: CsvGrid,
  columns: readonly CsvColumn[],
  unit: 'batch' | 'piece',
): { levels: LevelName[]; rows: ScoreRow[]; troubles: CsvTrouble[] } {
  const troubles: CsvTrouble[] = []
  const at = new Map(columns.map((column) => [column.role, column]))
  const responses = columns.filter((column) => column.role === 'response')
  const text = (cells: readonly string[], role: CsvRole) => cells[at.get(role)?.index ?? -1] ?? ''
  const number = (cells: readonly string[], column: CsvColumn | undefined, row: number) => {
    const cell = column ? (cells[column.index] ?? '') : ''
    if (!column || cell === '') return null
    const value = csvNumber(cell)
    if (value === null) {
      troubles.push({ reason: 'unreadable-number', row, column: column.heading, text: cell })
    }
    return value
  }
  const names = levelNames(grid, at.get('level')?.index ?? -1)
  const scored = responses.filter(({ index }) =>
    grid.rows.some(({ cells }) => cells[index] !== '' && text(cells, 'taster') !== ''),
  )
  const measured = (cells: readonly string[]) =>
    at.has('taster') &&
    text(cells, 'taster') === '' &&
    scored.every(({ index }) => cells[index] === '')
  const repeating = (at.get('taster') ?? at.get('level'))?.heading ?? null
  const seen = new Map<string, number>()
  const owners = new Map<string, { level: number; row: number }>()
  const owned = (key: string, level: number, row: number, reason: CsvTrouble['reason']) => {
    const owner = owners.get(key)
    if (!owner) owners.set(key, { level, row })
    else if (owner.level !== level) {
      const column = at.get(reason === 'batch-two-levels' ? 'batch' : 'piece')?.heading ?? null
      troubles.push({ reason, row, column, first: owner.row })
    }
  }
  const rows = grid.rows.map(({ number: row, cells }): ScoreRow => {
    for (const [role, reason] of needed) {
      const column = at.get(role)
      const blank = column !== undefined && text(cells, role) === ''
      const mayBe = role === 'taster' || role === 'flight' ? measured(cells) : false
      if (blank && !mayBe) troubles.push({ reason, row, column: column.heading })
    }
    const session = at.has('session') ? text(cells, 'session') : '1'
    const flight = at.has('flight') ? text(cells, 'flight') : '1'
    const taster = text(cells, 'taster') || null
    const level = names.indexOf(text(cells, 'level'))
    const letter = text(cells, 'batch')
    const batch = [session, letter || `level ${level}`].join(separator)
    const named = text(cells, 'piece')
    const piece = [session, named ? letter : flight, named || `level ${level}`].join(separator)
    if (level >= 0) {
      const key = [session, flight, level, taster ?? ''].join(separator)
      const first = seen.get(key)
      if (first === undefined) seen.set(key, row)
      else troubles.push({ reason: 'row-twice', row, column: repeating, first })
      if (letter && unit === 'batch') owned(`batch ${batch}`, level, row, 'batch-two-levels')
      if (named) owned(`piece ${piece}`, level, row, 'piece-two-levels')
    }
    return {
      session,
      flight: [session, flight].join(separator),
      batch,
      piece,
      level,
      taster,
      position: number(cells, at.get('position'), row),
      minutes: number(cells, at.get('minutes'), row),
      handled: null,
      values: responses.map((column) => number(cells, column, row)),
    }
  })
  return { levels: names.levels, rows, troubles }
}

const needed = [
  ['level', 'level-missing'],
  ['session', 'session-missing'],
  ['flight', 'flight-missing'],
  ['taster', 'taster-missing'],
] as const

function levelNames(grid: CsvGrid, index: number) {
  const texts = [...new Set(grid.rows.map(({ cells }) => cells[index] ?? ''))].filter(
    (text) => text !== '',
  )
  const numbers = texts.map(csvNumber)
  const measured = numbers.every((value) => value !== null)
  const levels: LevelName[] = measured
    ? [...new Set(numbers.filter((value) => value !== null))].toSorted((a, b) => a - b)
    : texts.toSorted((a, b) => (a < b ? -1 : a > b ? 1 : 0))
  const ranks = new Map(levels.map((name, rank) => [name, rank]))
  const places = new Map(
    texts.map((text, at) => [text, ranks.get(measured ? (numbers[at] ?? 0) : text) ?? -1]),
  )
  return { levels, indexOf: (text: string) => places.get(text) ?? -1 }
}
