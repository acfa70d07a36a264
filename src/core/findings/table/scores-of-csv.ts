import { alikeNames } from './alike-names.ts'
import { type CsvAssignment, type CsvColumn, csvColumns } from './csv-columns.ts'
import { type CsvGrid, csvGrid } from './csv-grid.ts'
import { isLevel } from './csv-levels.ts'
import { csvRows } from './csv-rows.ts'
import type { CsvTrouble } from './csv-trouble.ts'
import { tidiedGrid, type WideOffer, wideOffer } from './csv-wide.ts'
import { footRows } from './foot-rows.ts'
import type { LevelName, ScoreLevel, ScoreTable } from './score-table.ts'

export interface CsvOptions {
  as?: readonly CsvAssignment[]
  unit?: 'batch' | 'piece'
  /** The level that is the baker's usual. */
  control?: LevelName
  /** The smallest difference that matters in the first response. */
  margin?: number
  /** Which way the first response is better; nobody knows unless it is said. */
  better?: 'higher' | 'lower' | 'neither'
  /** Levels are names, whatever they look like: product codes. */
  levelsAre?: 'choice'
  /** Rows that stand twice are replicates in no block, each a dough or loaf of its own. */
  repeats?: 'replicates'
  /** What becomes of rows at the foot that sum up the others. */
  foot?: 'leave-out' | 'keep'
  /** Whether names that differ in capitals or spaces alone are one name. */
  alike?: 'one' | 'two'
  /** Converts a wide table: the offered columns become rows, their scores a response of this name. */
  tidyAs?: string
}

export type CsvScores =
  | { ok: true; scores: ScoreTable; columns: CsvColumn[] }
  | { ok: false; troubles: CsvTrouble[]; wide: WideOffer | null; columns: CsvColumn[] }

/**
 * Reads scores kept in a spreadsheet: one row for each session, flight, level and taster; every column of numbers that
 * is not named otherwise is a response, the first the main one; which way it is better nobody knows until it is said. Without
 * a session or flight column all rows are one. Blanks, dashes, NA and n/a are missing. Levels that are all numbers, with one
 * unit or none, are a measured factor in rising order; otherwise a choice in the order of the file. A replicate is in no block:
 * with one session the table is completely randomised. A wide table is recognised and offered, never converted unasked. Every
 * trouble and question is told at once, in the order of rows, and then nothing is taken over. Linear in the number of rows.
 */
export function scoresOfCsv(text: string, options: CsvOptions = {}): CsvScores {
  const grid = csvGrid(text)
  const read = csvColumns(grid, options.as ?? [])
  const troubles = grid.troubles.filter(({ reason }) => reason === 'too-many-rows')
  // What is shown of a table that is too long is no sample of what troubles it.
  if (troubles.length > 0) return { ok: false, troubles, wide: null, columns: read.columns }
  const wide = wideOffer(read.columns)
  if (wide && options.tidyAs !== undefined) {
    const foot = footRows(grid, read.columns, options.foot)
    const tidied = tidiedGrid(foot.grid, wide, options.tidyAs)
    const found = [...tidied.troubles, ...foot.troubles]
    return scoresOfGrid({ ...tidied, troubles: found }, options, wide.unitOfMeasure)
  }
  return scoresOfGrid(grid, options, '')
}

function scoresOfGrid(read: CsvGrid, options: CsvOptions, wideUnit: string): CsvScores {
  const left = new Set(read.header.map((heading) => heading.toLowerCase()))
  const as = (options.as ?? []).filter(
    ({ column }) => options.tidyAs === undefined || left.has(column.trim().toLowerCase()),
  )
  const { columns, troubles } = csvColumns(read, as)
  const missing = missingParts(read, columns)
  const foot = footRows(read, columns, options.foot)
  const alike = alikeNames(foot.grid, columns, options.alike)
  const { unit = 'batch' } = options
  const choice = options.levelsAre === 'choice'
  const replicates = options.repeats === 'replicates'
  const body =
    missing.length > 0
      ? { levels: [], unitOfMeasure: '', rows: [], troubles: [] }
      : csvRows(alike.grid, columns, { unit, choice, replicates })
  const refused = [read.troubles, troubles, missing, foot.troubles, alike.troubles]
    .concat([body.troubles])
    .flat()
  const { control } = options
  if (
    control !== undefined &&
    !body.levels.some((name) => isLevel(name, control)) &&
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
      id: `${name}`,
      name,
      value: typeof name === 'number' ? name : null,
      label: `${name}`,
      control: control !== undefined && isLevel(name, control),
    }),
  )
  const ordered = levels.every((level) => level.value !== null)
  const responses = columns.filter((column) => column.role === 'response')
  const made = replicates || columns.some((column) => column.role === 'replicate')
  const scores: ScoreTable = {
    factor: {
      kind: ordered ? 'measured' : 'choice',
      name: columns.find((column) => column.role === 'level')?.heading ?? 'level',
      unitOfMeasure: body.unitOfMeasure || wideUnit,
      ordered,
      splitsAt: null,
    },
    unit,
    levels,
    responses: responses.map((column, index) => ({
      id: column.heading,
      name: column.heading,
      scale: 'measured',
      better: { is: index === 0 ? (options.better ?? 'neither') : 'neither' },
      margin: index === 0 ? (options.margin ?? null) : null,
      failures: 0,
    })),
    rows: body.rows,
    expectation: null,
    tellApart: [],
    ease: null,
    ...(made ? { replicated: true } : {}),
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
