import Papa from 'papaparse'
import type { CsvTrouble } from './csv-trouble.ts'

/** Cells of a CSV text, trimmed, each row with the number a spreadsheet gives it. */
export interface CsvGrid {
  header: string[]
  rows: { number: number; cells: string[] }[]
  troubles: CsvTrouble[]
}

const mostRows = 1_000_000

/**
 * Reads RFC 4180 text into cells: comma, semicolon or tab (whichever parts the header most), a byte order mark taken
 * off, blank lines skipped. Rows that are broken or have another number of cells than the header are troubles.
 */
export function csvGrid(text: string): CsvGrid {
  const body = text.startsWith('\uFEFF') ? text.slice(1) : text
  if (body.trim() === '') {
    return { header: [], rows: [], troubles: [{ reason: 'no-text', row: null, column: null }] }
  }
  const parsed = Papa.parse<string[]>(body, { delimiter: delimiterOf(body), skipEmptyLines: false })
  const records = parsed.data.map((cells, index) => ({
    number: index + 1,
    cells: cells.map((cell) => cell.trim()),
  }))
  const troubles: CsvTrouble[] = parsed.errors
    .filter((error) => error.type === 'Quotes')
    .map((error) => ({ reason: 'broken-quotes', row: (error.row ?? 0) + 1, column: null }))
  const filled = records.filter(({ cells }) => cells.some((cell) => cell !== ''))
  const [first, ...rest] = filled
  const header = first?.cells ?? []
  if (rest.length > mostRows) troubles.push({ reason: 'too-many-rows', row: null, column: null })
  const broken = new Set(troubles.map((trouble) => trouble.row))
  const rows = rest.filter(({ number, cells }) => {
    if (cells.length === header.length) return !broken.has(number)
    if (!broken.has(number)) troubles.push(fieldCount(number, header.length, cells.length))
    return false
  })
  return { header, rows: rows.slice(0, mostRows), troubles }
}

function fieldCount(row: number, expected: number, found: number): CsvTrouble {
  return { reason: 'field-count', row, column: null, expected, found }
}

function delimiterOf(text: string): string {
  const body = text.replace(/^[\r\n]+/, '')
  const counts = ['\t', ';', ','].map((delimiter) => ({
    delimiter,
    cells: Papa.parse<string[]>(body, { delimiter, preview: 1 }).data[0]?.length ?? 0,
  }))
  const most = Math.max(...counts.map(({ cells }) => cells))
  return counts.find(({ cells }) => cells === most)?.delimiter ?? ','
}
