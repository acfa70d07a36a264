import type { ScoreRow, ScoreTable } from './score-table.ts'

/**
 * The filled cells of one response, coded by number: each array has one entry a score. Sessions, flights, units and
 * tasters are numbered in the order of their names, so that the order of rows does not matter. `taster` is -1 throughout
 * when nobody is named.
 */
export interface Cells {
  y: number[]
  level: number[]
  taster: number[]
  session: number[]
  flight: number[]
  batch: number[]
  piece: number[]
  minutes: (number | null)[]
  position: (number | null)[]
  handled: (number | null)[]
  tasters: string[]
  sessions: number
  flights: number
  batches: number
  pieces: number
}

/** The cells of the response at `index` of the table; rows without a value for it are left out. */
export function cellsOf(scores: ScoreTable, index: number): Cells {
  const rows = scores.rows.filter((row) => typeof row.values[index] === 'number')
  const session = coded(rows, (row) => row.session)
  const flight = coded(rows, (row) => row.flight)
  const batch = coded(rows, (row) => row.batch)
  const piece = coded(rows, (row) => row.piece)
  const named = rows.some((row) => row.taster !== null)
  const taster = coded(rows, (row) => row.taster ?? '')
  return {
    y: rows.map((row) => row.values[index] as number),
    level: rows.map((row) => row.level),
    taster: named ? taster.codes : rows.map(() => -1),
    session: session.codes,
    flight: flight.codes,
    batch: batch.codes,
    piece: piece.codes,
    minutes: rows.map((row) => row.minutes),
    position: rows.map((row) => row.position),
    handled: rows.map((row) => row.handled),
    tasters: named ? taster.names : [],
    sessions: session.names.length,
    flights: flight.names.length,
    batches: batch.names.length,
    pieces: piece.names.length,
  }
}

/**
 * Codes of the rows' keys, numbered in the order of the names. Rows of one key mostly stand together, so a key is looked up
 * where it changes; once all are met, the codes are renumbered by rank.
 */
function coded(rows: readonly ScoreRow[], keyOf: (row: ScoreRow) => string) {
  const met = new Map<string, number>()
  const codes = new Array<number>(rows.length)
  let last: string | null = null
  let code = 0
  for (let row = 0; row < rows.length; row += 1) {
    const key = keyOf(rows[row] as ScoreRow)
    if (key !== last) {
      code = met.get(key) ?? met.size
      met.set(key, code)
      last = key
    }
    codes[row] = code
  }
  const names = [...met.keys()].toSorted((a, b) => (a < b ? -1 : 1))
  const rank = new Array<number>(names.length)
  for (const [at, name] of names.entries()) rank[met.get(name) as number] = at
  for (let row = 0; row < codes.length; row += 1) codes[row] = rank[codes[row] as number] as number
  return { names, codes }
}
