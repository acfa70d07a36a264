import type { LevelRiders } from '@/core/trial/level-riders.ts'
import { gramsText } from '@/core/units/grams-text.ts'
import { decimalText } from '@/core/units/number-text.ts'
import type { SheetRow, WeighSheet } from '@/core/weighing/weigh-sheet.ts'

/** A line of the weigh sheet as it is written: one text a batch, empty where a batch takes none. */
export interface WrittenRow {
  key: string
  head: string
  cells: string[]
  quiet: boolean
}

/** Weights written with the decimals that their scale shows; without a scale with one, under 10 g with two. */
export function weighSheetRows(
  sheet: WeighSheet,
  plan: { preferments: readonly { id: string; name: string }[] },
): WrittenRow[] {
  return sheet.rows.map((row) => ({
    key: row.key,
    head: rowHead(row, plan.preferments, sheet),
    cells: row.cells.map((cell) => (cell ? gramsText(cell.grams, cell.resolutionGrams) : '')),
    quiet: row.what === 'all-of-preferment',
  }))
}

function rowHead(
  row: SheetRow,
  preferments: readonly { id: string; name: string }[],
  { doses }: WeighSheet,
): string {
  if (row.what === 'all-of-preferment') return `${row.name}, all of it`
  if (row.what === 'starter') return `${row.name}, ripe`
  const into = preferments.find(({ id }) => id === row.prefermentId)
  const ahead = row.into === 'preferment' && into ? `, for the ${into.name}` : ''
  if (row.what !== 'dose') return `${row.name}${ahead}`
  const dose = doses.find(({ ingredientId }) => ingredientId === row.ingredientId)
  return `${row.name}, ${dose?.by === 'stock' ? 'of the stock' : 'of the dry mix'}${ahead}`
}

/** What the weights come to: dough of each batch, and the level that the rounded weights make with its uncertainty. */
export function achievedRows(sheet: WeighSheet, unit: string): WrittenRow[] {
  const rows = [
    {
      key: 'dough',
      head: 'Dough',
      cells: sheet.batches.map(({ doughGrams }) => decimalText(doughGrams, 0)),
      quiet: true,
    },
  ]
  if (sheet.batches.every(({ achieved }) => achieved === null) || sheet.scales.length === 0)
    return rows
  const decimals = Math.max(
    ...sheet.batches.map(({ achieved }) =>
      achieved ? uncertaintyDecimals(achieved.expandedUncertainty) : 0,
    ),
  )
  const cells = (of: 'value' | 'expandedUncertainty') =>
    sheet.batches.map(({ achieved }) => (achieved ? decimalText(achieved[of], decimals) : ''))
  return [
    ...rows,
    { key: 'achieved', head: `Achieved, ${unit}`, cells: cells('value'), quiet: true },
    { key: 'uncertainty', head: 'give or take', cells: cells('expandedUncertainty'), quiet: true },
    ...atFourteenRows(sheet, unit, decimals),
  ]
}

/** The same doughs told at 14 % flour moisture, where every bag's is known; nothing elsewhere. */
function atFourteenRows({ batches }: WeighSheet, unit: string, decimals: number): WrittenRow[] {
  if (batches.every(({ atFourteen }) => atFourteen === null)) return []
  const cells = batches.map(({ atFourteen }) =>
    atFourteen === null ? '' : decimalText(atFourteen, Math.min(decimals, 2)),
  )
  return [{ key: 'at-fourteen', head: `at 14 % flour moisture, ${unit}`, cells, quiet: true }]
}

/** Decimals that show an uncertainty with one leading figure: 0.2, 0.04. Between none and four. */
function uncertaintyDecimals(uncertainty: number): number {
  if (!(uncertainty > 0)) return 1
  return Math.min(4, Math.max(0, Math.ceil(-Math.log10(uncertainty))))
}

/** Whose columns the sheet has, in order: every level's, or (null) that of one dough for all. */
export function sheetColumns(
  sheet: WeighSheet,
  levels: readonly { id: string }[],
): (string | null)[] {
  return sheet.batches.some(({ levelId }) => levelId === null) ? [null] : levels.map(({ id }) => id)
}

/**
 * Rows with a cell for every column: a level that cannot be made, as while half of it is typed, keeps its place with dashes, so
 * that nothing jumps.
 */
export function inColumns(
  rows: readonly WrittenRow[],
  sheet: WeighSheet,
  columns: readonly (string | null)[],
): WrittenRow[] {
  if (sheet.unmadeLevelIds.length === 0) return [...rows]
  const places = columns.map((id) => sheet.batches.findIndex(({ levelId }) => levelId === id))
  return rows.map((row) => ({ ...row, cells: places.map((at) => row.cells[at] ?? '–') }))
}

/** What rides along with the level on the formula's side, where it does: piece mass, flour in a piece, salt and yeast of the water. */
export function riderRows(riders: readonly LevelRiders[]): WrittenRow[] {
  return [
    riderRow('piece', 'Mass of a piece, g', riders, (each) => each.pieceGrams, 0),
    riderRow('flour-piece', 'Flour in a piece, g', riders, (each) => each.flourPerPieceGrams, 1),
    riderRow('salt', 'Salt in the water, %', riders, (each) => each.saltPercentOfWater, 2),
    riderRow('yeast', 'Yeast in the water, %', riders, (each) => each.yeastPercentOfWater, 2),
  ].filter((row) => new Set(row.cells).size > 1)
}

function riderRow(
  key: string,
  head: string,
  riders: readonly LevelRiders[],
  of: (riders: LevelRiders) => number | null,
  decimals: number,
): WrittenRow {
  const cells = riders.map((each) => {
    const value = of(each)
    return value === null ? '' : decimalText(value, decimals)
  })
  return { key, head, cells, quiet: true }
}
