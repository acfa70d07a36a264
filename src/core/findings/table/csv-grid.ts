import Papa from 'papaparse'
import type { CsvTrouble } from './csv-trouble.ts'

/** Cells of a CSV text, trimmed, each row with the number a spreadsheet gives it. */
export interface CsvGrid {
  /** Headings; a column without one is called by its place, such as “column 1”. */
  header: string[]
  rows: { number: number; cells: string[] }[]
  troubles: CsvTrouble[]
  /** Places of the columns that have no heading of their own. */
  unnamed: number[]
}

/** The most rows that are read, the header apart: half a million. */
export const mostRows = 500_000

/** The header and blank lines, beside the most rows. */
const blankAllowed = 1000

/** So many rows of a table past the most are given, for a look at what it is. */
const shownOfTooMany = 50

/**
 * Reads RFC 4180 text into cells: comma, semicolon or tab (whichever parts the header most), a byte order mark taken
 * off, blank lines skipped, blank cells past the header's last one left out. Rows that are broken or have another number of
 * cells than the header are troubles. Each distinct cell is kept once. Past the most rows reading ends: the first of them are
 * given, with that as the only trouble.
 */
export function csvGrid(text: string): CsvGrid {
  const body = text.startsWith('\uFEFF') ? text.slice(1) : text
  const troubles: CsvTrouble[] = []
  if (body.trim() === '')
    return {
      header: [],
      rows: [],
      troubles: [{ reason: 'no-text', row: null, column: null }],
      unnamed: [],
    }
  const once = new Map<string, string>()
  const kept = (cell: string): string => {
    const trimmed = cell.trim()
    const known = once.get(trimmed)
    if (known !== undefined) return known
    once.set(trimmed, trimmed)
    return trimmed
  }
  let header: string[] | null = null
  const rows: CsvGrid['rows'] = []
  let number = 0
  const take = (data: readonly string[], isBroken: boolean): boolean => {
    number += 1
    if (isBroken) troubles.push({ reason: 'broken-quotes', row: number, column: null })
    const cells = data.map(kept)
    if (cells.every((cell) => cell === '')) return true
    if (header === null) {
      header = withoutBlankEnd(cells)
      return true
    }
    if (rows.length === mostRows) return false
    while (cells.length > header.length && cells.at(-1) === '') cells.pop()
    if (cells.length === header.length && !isBroken) rows.push({ number, cells })
    else if (!isBroken) troubles.push(fieldCount(number, header.length, cells.length))
    return true
  }
  const isPlainlyTooLong = hasMoreLines(body, mostRows + blankAllowed)
  let isWhole = true
  Papa.parse<string[]>(body, {
    delimiter: delimiterOf(body),
    skipEmptyLines: false,
    // Its quick way cuts the whole text into lines first.
    ...(isPlainlyTooLong ? { preview: shownOfTooMany, fastMode: false } : {}),
    step: ({ data, errors }, parser) => {
      isWhole = take(
        data,
        errors.some(({ type }) => type === 'Quotes'),
      )
      if (!isWhole) parser.abort()
    },
  })
  // Nobody reads on in a table that is refused as a whole: what is left of it is shown, not worked on.
  if (!isWhole || isPlainlyTooLong) {
    rows.length = Math.min(rows.length, shownOfTooMany)
    troubles.splice(0, troubles.length, { reason: 'too-many-rows', row: null, column: null })
  }
  const headings: string[] = header ?? []
  return {
    header: headings.map((heading, at) => (heading === '' ? placeName(headings, at) : heading)),
    rows,
    troubles,
    unnamed: headings.flatMap((heading, at) => (heading === '' ? [at] : [])),
  }
}

/** True where a text without quotes, in which a line is a row, has more lines than so many; one with quotes must be read to tell. */
function hasMoreLines(text: string, most: number): boolean {
  if (text.includes('"')) return false
  let lines = 1
  for (let at = text.indexOf('\n'); at >= 0 && lines <= most; at = text.indexOf('\n', at + 1))
    lines += 1
  return lines > most
}

/** Columns that neither heading nor any cell fills are none; the first may go without a heading. */
function withoutBlankEnd(cells: readonly string[]): string[] {
  const last = cells.findLastIndex((cell) => cell !== '')
  return cells.slice(0, last + 1)
}

function placeName(headings: readonly string[], at: number): string {
  const name = `column ${at + 1}`
  return headings.includes(name) ? `${name}, no heading` : name
}

function fieldCount(row: number, expected: number, found: number): CsvTrouble {
  return { reason: 'field-count', row, column: null, expected, found }
}

function delimiterOf(text: string): string {
  const body = text.replace(/^[\r\n]+/, '')
  const counts = ['\t', ';', ','].map((delimiter) => ({
    delimiter,
    cells:
      Papa.parse<string[]>(body, { delimiter, preview: 1, fastMode: false }).data[0]?.length ?? 0,
  }))
  const most = Math.max(...counts.map(({ cells }) => cells))
  return counts.find(({ cells }) => cells === most)?.delimiter ?? ','
}
