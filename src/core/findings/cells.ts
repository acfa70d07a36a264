import type { ScoreRow, ScoreTable } from './score-table.ts'

/**
 * The filled cells of one response, column by column: each has one entry a score. Sessions, flights, units and tasters are
 * numbered in the order of their names, so that the order of rows does not matter. `taster` is -1 throughout when nobody
 * is named; `minutes`, `position` and `handled` are NaN where they were not recorded.
 */
export interface Cells {
  y: Float64Array
  level: Int32Array
  taster: Int32Array
  session: Int32Array
  flight: Int32Array
  batch: Int32Array
  piece: Int32Array
  minutes: Float64Array
  position: Float64Array
  handled: Float64Array
  tasters: string[]
  sessions: number
  flights: number
  batches: number
  pieces: number
}

/** The cells of the response at `index` of the table; rows without a value for it are left out. */
export function cellsOf(scores: ScoreTable, index: number): Cells {
  const rows = scores.rows.filter((row) => typeof row.values[index] === 'number')
  const count = rows.length
  const y = new Float64Array(count)
  const level = new Int32Array(count)
  const minutes = new Float64Array(count)
  const position = new Float64Array(count)
  const handled = new Float64Array(count)
  let named = false
  for (let at = 0; at < count; at += 1) {
    const row = rows[at] as ScoreRow
    y[at] = row.values[index] as number
    level[at] = row.level
    minutes[at] = row.minutes ?? Number.NaN
    position[at] = row.position ?? Number.NaN
    handled[at] = row.handled ?? Number.NaN
    if (row.taster !== null) named = true
  }
  const session = coded(rows, (row) => row.session)
  const flight = coded(rows, (row) => row.flight)
  const batch = coded(rows, (row) => row.batch)
  const piece = coded(rows, (row) => row.piece)
  const taster = coded(rows, (row) => row.taster ?? '')
  return {
    ...{ y, level, minutes, position, handled },
    taster: named ? taster.codes : taster.codes.fill(-1),
    session: session.codes,
    flight: flight.codes,
    batch: batch.codes,
    piece: piece.codes,
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
  const codes = new Int32Array(rows.length)
  let last: string | null = null
  let code = 0
  for (let row = 0; row < rows.length; row += 1) {
    const key = keyOf(rows[row] as ScoreRow)
    if (key !== last) {
      code = met.get(key) ?? met.size
      if (code === met.size) met.set(key, code)
      last = key
    }
    codes[row] = code
  }
  const names = [...met.keys()].sort((a, b) => (a < b ? -1 : 1))
  const rank = new Int32Array(names.length)
  for (const [at, name] of names.entries()) rank[met.get(name) as number] = at
  for (let row = 0; row < codes.length; row += 1) codes[row] = rank[codes[row] as number] as number
  return { names, codes }
}
