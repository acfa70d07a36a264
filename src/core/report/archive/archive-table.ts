import Papa from 'papaparse'

/** What a column of an archive table holds. */
export interface ArchiveColumn {
  name: string
  meaning: string
  /** Unit of its numbers; empty for words. */
  unit: string
  type: 'text' | 'number' | 'whole number' | 'time (UTC)'
}

/** A tidy table: one row an observation, one column a variable; a blank where nothing was recorded. */
export interface ArchiveTable {
  file: string
  about: string
  columns: ArchiveColumn[]
  rows: (string | number | null)[][]
}

/** A cell that begins like a formula and is no plain number. */
export const formulaCell = /^(?!-?\d+(\.\d+)?(e[-+]?\d+)?$)[=+\-@\t\r\n]/i

/** The table as CSV (RFC 4180: commas, CRLF, quotes doubled); what a spreadsheet would run as a formula is defused. */
export function tableCsv({ columns, rows }: ArchiveTable): string {
  const fields = columns.map(({ name }) => name)
  const data = rows.map((row) => row.map((cell) => cell ?? ''))
  return `${Papa.unparse({ fields, data }, { newline: '\r\n', escapeFormulae: formulaCell })}\r\n`
}

/** The dictionary of all tables: each column with its meaning, unit and type. */
export function dictionaryOf(tables: readonly ArchiveTable[]): ArchiveTable {
  const text = (name: string, meaning: string): ArchiveColumn => ({
    ...{ name, meaning, unit: '', type: 'text' },
  })
  return {
    file: 'dictionary.csv',
    about: 'every column of every table',
    columns: [
      text('file', 'the table'),
      text('about', 'what a row of it is'),
      text('column', 'the column'),
      text('meaning', 'what it holds'),
      text('unit', 'unit of its numbers'),
      text('type', 'text, number, whole number or time'),
    ],
    rows: tables.flatMap(({ file, about, columns }) =>
      columns.map(({ name, meaning, unit, type }) => [file, about, name, meaning, unit, type]),
    ),
  }
}
