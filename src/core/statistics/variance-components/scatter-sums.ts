import { dot, orthonormalBeyond } from './orthonormal-span.ts'

/** Scores of one trial, one entry a row, as codes from 0 up. A piece belongs to one level, one flight and one batch. */
export interface ScatterRows {
  y: readonly number[]
  taster: readonly number[]
  level: readonly number[]
  /** Numbered over all sessions: what a taster scores in one go. */
  flight: readonly number[]
  batch: readonly number[]
  piece: readonly number[]
}

/** A sum of squares with how often each variance component is expected in it. */
export interface ScatterSum {
  squares: number
  /** Degrees of freedom: how often the residual variance is in it. */
  df: number
  tasterLevel: number
  piece: number
  batch: number
}

export interface ScatterSums {
  residual: ScatterSum
  tasterLevel: ScatterSum
  piece: ScatterSum
  batch: ScatterSum
}

/**
 * Sums of squares of y ~ taster:flight + level + taster:level + batch + piece and their expectations, by Henderson's third
 * method (Searle, Casella and McCulloch, Variance Components, 1992, chapter 5; from memory): taster:level after everything
 * else, batch after taster:level, piece after both, residual last. A taster's own mood in a flight is swept out and counts as
 * no component. With equal numbers these are the sums of the plain analysis of variance. A sum without degrees of freedom
 * is all zeros.
 *
 * @example scatterSums(scatter).residual // {"squares": 0} (the worked scores are taster + level + piece exactly)
 */
export function scatterSums(rows: ScatterRows): ScatterSums {
  insist(rows)
  const sittings = coded(rows.taster.map((taster, row) => `${taster} ${rows.flight[row]}`))
  const sweep = (column: ArrayLike<number>) => withoutMeans(column, sittings)
  const columnsOf = (codes: readonly number[]) => indicators(codes).map(sweep)
  const y = sweep(rows.y)
  const parts = {
    tasterLevel: columnsOf(coded(rows.taster.map((taster, row) => `${taster} ${rows.level[row]}`))),
    piece: columnsOf(rows.piece),
    batch: columnsOf(rows.batch),
  }
  const level = orthonormalBeyond([], columnsOf(rows.level))
  const ofPieces = [...level, ...orthonormalBeyond(level, parts.piece)]
  const ownTaste = orthonormalBeyond(ofPieces, parts.tasterLevel)
  const before = [...level, ...orthonormalBeyond(level, parts.tasterLevel)]
  const ofBatches = orthonormalBeyond(before, parts.batch)
  const ofTheirPieces = orthonormalBeyond([...before, ...ofBatches], parts.piece)
  const all = [...before, ...ofBatches, ...ofTheirPieces]
  const left = Float64Array.from(y)
  for (const unit of all) {
    const along = dot(left, unit)
    for (let row = 0; row < left.length; row += 1)
      left[row] = (left[row] as number) - along * (unit[row] as number)
  }
  const none = { tasterLevel: 0, piece: 0, batch: 0 }
  return {
    residual: {
      squares: dot(left, left),
      df: rows.y.length - new Set(sittings).size - all.length,
      ...none,
    },
    tasterLevel: {
      ...squaresIn(ownTaste, y),
      ...none,
      tasterLevel: weightIn(ownTaste, parts.tasterLevel),
    },
    piece: { ...squaresIn(ofTheirPieces, y), ...none, piece: weightIn(ofTheirPieces, parts.piece) },
    batch: {
      ...squaresIn(ofBatches, y),
      ...none,
      piece: weightIn(ofBatches, parts.piece),
      batch: weightIn(ofBatches, parts.batch),
    },
  }
}

function squaresIn(span: readonly Float64Array[], y: Float64Array) {
  return { squares: span.reduce((sum, unit) => sum + dot(unit, y) ** 2, 0), df: span.length }
}

/** How often the variance of an effect with these columns is expected in a span's sum of squares: the trace of Z'UU'Z. */
function weightIn(span: readonly Float64Array[], columns: readonly Float64Array[]): number {
  return span.reduce(
    (sum, unit) => sum + columns.reduce((own, column) => own + dot(unit, column) ** 2, 0),
    0,
  )
}

function withoutMeans(column: ArrayLike<number>, groups: readonly number[]): Float64Array {
  const sums: number[] = []
  const counts: number[] = []
  for (const [row, group] of groups.entries()) {
    sums[group] = (sums[group] ?? 0) + (column[row] as number)
    counts[group] = (counts[group] ?? 0) + 1
  }
  return Float64Array.from(
    groups,
    (group, row) => (column[row] as number) - (sums[group] as number) / (counts[group] as number),
  )
}

function indicators(codes: readonly number[]): Float64Array[] {
  return [...new Set(codes)].map((code) =>
    Float64Array.from(codes, (own) => (own === code ? 1 : 0)),
  )
}

function coded(keys: readonly string[]): number[] {
  const codes = new Map<string, number>()
  return keys.map((key) => {
    const known = codes.get(key) ?? codes.size
    codes.set(key, known)
    return known
  })
}

function insist({ y, taster, level, flight, batch, piece }: ScatterRows): void {
  for (const codes of [taster, level, flight, batch, piece])
    if (codes.length !== y.length) throw new RangeError('every column must have one entry a row')
  if (!y.every(Number.isFinite)) throw new RangeError('every score must be a finite number')
}
