import type { LevelName } from '@/core/findings/rungs/rung-shape.ts'
import { type CsvAssignment, type CsvColumn, csvColumns } from './csv-columns.ts'
import { type CsvGrid, csvGrid } from './csv-grid.ts'
import { csvRows } from './csv-rows.ts'
import type { CsvTrouble } from './csv-trouble.ts'
import { tidiedGrid, type WideOffer, wideOffer } from './csv-wide.ts'
import type { ScoreLevel, ScoreTable } from './score-table.ts'

export interface CsvOptions {
  as?: readonly CsvAssignment[]
  unit?: 'batch' | 'piece'
  /** The level that is the baker's usual. */
  control?: LevelName
  /** The smallest difference that matters in the first response. */
  margin?: number
  /** Converts a wide table: the offered columns become rows, their scores a response of this name. */
  tidyAs?: string
}

export type CsvScores =
  | { ok: true; scores: ScoreTable; columns: CsvColumn[] }
  | { ok: false; troubles: CsvTrouble[]; wide: WideOffer | null; columns: CsvColumn[] }

/**
 * Reads scores kept in a spreadsheet: one row for each session, flight, level and taster; every column of numbers that
 * is not named otherwise is a response, the first the main one, and more counts as better. Without a session or flight
 * column all rows are one. Levels that are all numbers are a measured factor in rising order; otherwise a choice, in
 * the order of their characters. A wide table is recognised and offered, never converted unasked. Every trouble is
 * reported at once, in the order of rows, and then nothing is taken over. Linear in the number of rows.
 */
export function scoresOfCsv(text: string, options: CsvOptions = {}): CsvScores {
  const grid = csvGrid(text)
  const read = csvColumns(grid, options.as ?? [])
  const wide = wideOffer(read.columns)
  if (wide && options.tidyAs !== undefined) {
    return scoresOfGrid(tidiedGrid(grid, wide, options.tidyAs), options, wide.unitOfMeasure)
  }
  return scoresOfGrid(grid, options, '')
}

function scoresOfGrid(grid: CsvGrid, options: CsvOptions, unitOfMeasure: string): CsvScores {
  const left = new Set(grid.header.map((heading) => heading.toLowerCase()))
  const as = (options.as ?? []).filter(
    ({ column }) => options.tidyAs === undefined || left.has(column.trim().toLowerCase()),
  )
  const { columns, troubles } = csvColumns(grid, as)
  const missing = missingParts(grid, columns)
  const refused = [...grid.troubles, ...troubles, ...missing]
  const unit = options.unit ?? 'batch'
  const body =
    missing.length > 0 ? { levels: [], rows: [], troubles: [] } : csvRows(grid, columns, unit)
  refused.push(...body.troubles)
  const { control } = options
  if (
    control !== undefined &&
    !body.levels.some((name) => name === control) &&
    missing.length === 0
  ) {
    refused.push({ reason: 'control-not-a-level', row: null, column: null, text: `${control}` })
  }
  if (refused.length > 0) {
    const inTurn = refused.toSorted((a, b) => (a.row ?? 0) - (b.row ?? 0))
    return { ok: false, troubles: inTurn, wide: wideOffer(columns), columns }
  }
  const levels = body.levels.map(
    (name): ScoreLevel => ({
      name,
      value: typeof name === 'number' ? name : null,
      label: `${name}`,
      control: name === control,
    }),
  )
  const ordered = levels.every((level) => level.value !== null)
  const responses = columns.filter((column) => column.role === 'response')
  const scores: ScoreTable = {
    factor: {
      kind: ordered ? 'measured' : 'choice',
      name: columns.find((column) => column.role === 'level')?.heading ?? 'level',
      unitOfMeasure,
      ordered,
      splitsAt: null,
    },
    unit,
    levels,
    responses: responses.map((column, index) => ({
      name: column.heading,
      scale: 'measured',
      better: { is: 'higher' },
      margin: index === 0 ? (options.margin ?? null) : null,
      failures: 0,
    })),
    rows: body.rows,
    expectation: null,
    tellApart: [],
    ease: null,
  }
  return { ok: true, scores, columns }
}

function missingParts(grid: CsvGrid, columns: readonly CsvColumn[]): CsvTrouble[] {
  if (grid.header.length === 0) return []
  const none = { row: null, column: null }
  if (grid.rows.length === 0 && grid.troubles.length === 0) return [{ reason: 'no-rows', ...none }]
  const troubles: CsvTrouble[] = []
  const has = (role: CsvColumn['role']) => columns.some((column) => column.role === role)
  if (!has('level')) troubles.push({ reason: 'no-level-column', ...none })
  if (!has('response')) troubles.push({ reason: 'no-response-column', ...none })
  return troubles
}
