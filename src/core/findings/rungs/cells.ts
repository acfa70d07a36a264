import type { ScoreTable } from '@/core/findings/table/score-table.ts'

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
  /** Every value is of a whole dough, not of a piece of it. */
  ofDoughs: boolean
}

/** The cells of the response at `index` of the table; rows without a value for it are left out. */
export function cellsOf(scores: ScoreTable, index: number): Cells {
  const { length } = scores.rows
  const y = new Float64Array(length)
  const level = new Int32Array(length)
  const minutes = new Float64Array(length)
  const position = new Float64Array(length)
  const handled = new Float64Array(length)
  const session = new Codes(length)
  const flight = new Codes(length)
  const batch = new Codes(length)
  const piece = new Codes(length)
  const taster = new Codes(length)
  let named = false
  let ofDoughs = true
  let count = 0
  for (const row of scores.rows) {
    const value = row.values[index]
    if (typeof value !== 'number') continue
    y[count] = value
    level[count] = row.level
    minutes[count] = row.minutes ?? Number.NaN
    position[count] = row.position ?? Number.NaN
    handled[count] = row.handled ?? Number.NaN
    session.add(row.session)
    flight.add(row.flight)
    batch.add(row.batch)
    piece.add(row.piece)
    taster.add(row.taster ?? '')
    if (row.taster !== null) named = true
    if (row.piece !== row.batch) ofDoughs = false
    count += 1
  }
  const [tasters, sessions, flights] = [taster.inOrder(), session.inOrder(), flight.inOrder()]
  const [batches, pieces] = [batch.inOrder(), piece.inOrder()]
  return {
    y: y.subarray(0, count),
    level: level.subarray(0, count),
    minutes: minutes.subarray(0, count),
    position: position.subarray(0, count),
    handled: handled.subarray(0, count),
    taster: named ? tasters.codes : tasters.codes.fill(-1),
    tasters: named ? tasters.names : [],
    session: sessions.codes,
    flight: flights.codes,
    batch: batches.codes,
    piece: pieces.codes,
    sessions: sessions.names.length,
    flights: flights.names.length,
    batches: batches.names.length,
    pieces: pieces.names.length,
    ofDoughs,
  }
}

/** Codes of a column of names; rows of one name mostly stand together, so a name is looked up where it changes. */
class Codes {
  readonly #codes: Int32Array
  #rows = 0
  readonly #met = new Map<string, number>()
  #last: string | null = null
  #code = 0

  constructor(most: number) {
    this.#codes = new Int32Array(most)
  }

  add(name: string): void {
    if (name !== this.#last) {
      this.#code = this.#met.get(name) ?? this.#met.size
      if (this.#code === this.#met.size) this.#met.set(name, this.#code)
      this.#last = name
    }
    this.#codes[this.#rows] = this.#code
    this.#rows += 1
  }

  /** The names in their order, and each row's code by that order. */
  inOrder(): { names: string[]; codes: Int32Array } {
    const names = [...this.#met.keys()].sort((a, b) => (a < b ? -1 : 1))
    const rank = new Int32Array(names.length)
    for (const [at, name] of names.entries()) rank[this.#met.get(name) as number] = at
    const codes = this.#codes.subarray(0, this.#rows)
    for (let row = 0; row < codes.length; row += 1)
      codes[row] = rank[codes[row] as number] as number
    return { names, codes }
  }
}
