import type { CsvColumn } from './csv-columns.ts'
import type { CsvGrid } from './csv-grid.ts'
import { isMissing, numberWithUnit } from './table-number.ts'

/** A table with a column for each level, as it would be converted: these columns become rows of one response. */
export interface WideOffer {
  columns: string[]
  /** What would stand in the level column, without the unit. */
  levels: string[]
  /** The unit that all headings carry after their number, such as "%"; empty when none. */
  unitOfMeasure: string
}

/**
 * Recognises a wide table: no level column, and two or more columns of numbers headed by numbers (a common unit may
 * follow), else two or more columns of numbers under any heading, read as the options of a choice. Null when it is none.
 */
export function wideOffer(columns: readonly CsvColumn[]): WideOffer | null {
  if (columns.some((column) => column.role === 'level')) return null
  const numeric = columns.filter((column) => column.role === 'response')
  const measured = numeric.map(({ heading }) => ({ heading, ...headed(heading) }))
  const withNumber = measured.filter(({ level }) => level !== null)
  const unit = withNumber[0]?.unit ?? ''
  const alike = withNumber.filter((column) => column.unit === unit)
  if (alike.length >= 2) {
    return {
      columns: alike.map(({ heading }) => heading),
      levels: alike.map(({ level }) => level ?? ''),
      unitOfMeasure: unit,
    }
  }
  if (numeric.length < 2) return null
  const headings = numeric.map(({ heading }) => heading)
  return { columns: headings, levels: headings, unitOfMeasure: '' }
}

/** The table with a row for each filled cell of the offered columns: headings become levels, cells the scores of `response`. */
export function tidiedGrid(grid: CsvGrid, offer: WideOffer, response: string): CsvGrid {
  const wide = offer.columns.map((column) => grid.header.indexOf(column))
  const kept = grid.header.map((_, index) => index).filter((index) => !wide.includes(index))
  const rows = grid.rows.flatMap(({ number, cells }) =>
    wide.flatMap((from, index) => {
      const score = cells[from] ?? ''
      if (isMissing(score)) return []
      const rest = kept.map((at) => cells[at] ?? '')
      return [{ number, cells: [...rest, offer.levels[index] ?? '', score] }]
    }),
  )
  const header = [...kept.map((at) => grid.header[at] ?? ''), 'level', response]
  const unnamed = grid.unnamed.flatMap((at) => {
    const place = kept.indexOf(at)
    return place < 0 ? [] : [place]
  })
  return { header, rows, troubles: grid.troubles, unnamed }
}

function headed(heading: string): { level: string | null; unit: string } {
  const read = numberWithUnit(heading)
  return { level: read?.number ?? null, unit: read?.unit ?? '' }
}
