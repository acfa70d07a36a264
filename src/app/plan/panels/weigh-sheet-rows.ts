import type { LevelRiders } from '@/core/trial/level-riders.ts'
import { massUnit, roundedMass } from '@/core/units/mass-text.ts'
import { decimalText } from '@/core/units/number-text.ts'
import type { WeighSheet } from '@/core/weighing/weigh-sheet.ts'
import type { WrittenRow } from '@/core/weighing/written-sheet.ts'

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
    riderRow(
      'piece',
      `Mass of a piece, ${massUnit()}`,
      riders,
      (each) => each.pieceGrams,
      massOf(0),
    ),
    riderRow(
      'flour-piece',
      `Flour in a piece, ${massUnit()}`,
      riders,
      (each) => each.flourPerPieceGrams,
      massOf(1),
    ),
    riderRow('salt', 'Salt in the water, %', riders, (each) => each.saltPercentOfWater, percent),
    riderRow('yeast', 'Yeast in the water, %', riders, (each) => each.yeastPercentOfWater, percent),
  ].filter((row) => new Set(row.cells).size > 1)
}

const massOf = (decimals: number) => (grams: number) => roundedMass(grams, decimals)
const percent = (value: number) => decimalText(value, 2)

function riderRow(
  key: string,
  head: string,
  riders: readonly LevelRiders[],
  of: (riders: LevelRiders) => number | null,
  written: (value: number) => string,
): WrittenRow {
  const cells = riders.map((each) => {
    const value = of(each)
    return value === null ? '–' : written(value)
  })
  return { key, head, cells, quiet: true }
}
