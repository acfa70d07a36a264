import type { Cells } from './cells.ts'

/** The cells of some rows alone, what they belong to renumbered without gaps; tasters keep their codes and names. */
export function cellsWhere(cells: Cells, kept: (row: number) => boolean): Cells {
  const keep = (_: number, row: number) => kept(row)
  const only = {
    y: cells.y.filter(keep),
    level: cells.level.filter(keep),
    taster: cells.taster.filter(keep),
    minutes: cells.minutes.filter(keep),
    position: cells.position.filter(keep),
    handled: cells.handled.filter(keep),
  }
  const session = withoutGaps(cells.session.filter(keep))
  const flight = withoutGaps(cells.flight.filter(keep))
  const batch = withoutGaps(cells.batch.filter(keep))
  const piece = withoutGaps(cells.piece.filter(keep))
  return {
    ...cells,
    ...only,
    ...{ session: session.codes, sessions: session.count },
    ...{ flight: flight.codes, flights: flight.count },
    ...{ batch: batch.codes, batches: batch.count, piece: piece.codes, pieces: piece.count },
  }
}

function withoutGaps(codes: Int32Array): { codes: Int32Array; count: number } {
  const at = new Int32Array(1 + codes.reduce((most, code) => Math.max(most, code), -1))
  for (let row = 0; row < codes.length; row += 1) at[codes[row] as number] = 1
  let count = 0
  for (let code = 0; code < at.length; code += 1)
    if (at[code] === 1) {
      at[code] = count
      count += 1
    }
  return { codes: codes.map((code) => at[code] as number), count }
}
