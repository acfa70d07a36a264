import {
  gramsDecimals,
  massDecimals,
  massFigure,
  plainMass,
  roundedMass,
} from '@/core/units/mass-text.ts'
import { decimalText, shortUnit } from '@/core/units/number-text.ts'
import type { WeighLine } from './batch-weights.ts'
import type { SheetRow, WeighSheet } from './weigh-sheet.ts'

/** A line of the weigh sheet as every face writes it: one text a batch, a dash where a batch takes none. */
export interface WrittenRow {
  key: string
  head: string
  cells: string[]
  /** Not weighed: what goes in whole, sums, the level that comes of it. */
  quiet: boolean
}

export interface WrittenSheet {
  /** What to weigh, in the order of work, in grams. */
  weights: WrittenRow[]
  /** What that comes to: the dough, and the level the weights make with its expanded uncertainty. */
  comesTo: WrittenRow[]
}

const none = '–'

/**
 * The weigh sheet in words and figures: what the plan's page, the printed sheet, the terminal, the bench and the report show.
 * Grams have the decimals that their scale shows; without a scale one, under 10 g two. A preferment is weighed as its parts
 * and goes in whole, at what these come to. Without a scale no level is said to be achieved.
 */
export function writtenSheet(sheet: WeighSheet, unitOfMeasure: string): WrittenSheet {
  const weights = sheet.rows.map((row) => ({
    key: row.key,
    head: rowHead(row, sheet),
    cells: row.cells.map((_, at) => weightIn(sheet, row, at)?.text ?? none),
    quiet: row.what === 'all-of-preferment',
  }))
  return { weights, comesTo: [doughRow(sheet), ...achievedRows(sheet, unitOfMeasure)] }
}

/** What a line is called: the thing itself, how it goes in where that is not plain, and the preferment it is weighed for. */
export function rowHead(row: SheetRow, sheet: Pick<WeighSheet, 'batches' | 'doses'>): string {
  if (row.what === 'all-of-preferment') return `${row.name}, ${comesOut(row, sheet)}`
  if (row.what === 'starter') return `${row.name}, ripe`
  const dose = sheet.doses.find(({ ingredientId }) => ingredientId === row.ingredientId)
  const name = row.what === 'dose' && dose ? doseName(row.name, dose.by) : row.name
  const into = sheet.batches
    .flatMap(({ formula }) => formula.preferments)
    .find(({ id }) => id === row.prefermentId)
  return row.into === 'preferment' && into ? `${name}, for the ${into.name}` : name
}

/** How much of a preferment goes into the dough: all of it, or what comes out of a jar that keeps some. */
function comesOut({ prefermentId }: SheetRow, { batches }: Pick<WeighSheet, 'batches'>): string {
  const preferments = batches.flatMap(({ formula }) => formula.preferments)
  const clings = preferments.find(({ id }) => id === prefermentId)?.clingsGrams ?? 0
  return clings > 0
    ? `all that comes out (${plainMass(clings)} more made, for the jar)`
    : 'all of it'
}

/** An ingredient that goes in by a stock or dry mix shared by all batches, which is what is weighed. */
export function doseName(name: string, by: 'stock' | 'dry-mix'): string {
  return `${name}, ${by === 'stock' ? 'stock' : 'dry mix'}`
}

/** What to weigh of a row for the batch at a place, as its scale shows it, in grams and as text; null where it takes none. */
export function weightIn(
  sheet: Pick<WeighSheet, 'batches'>,
  row: SheetRow,
  at: number,
): { line: WeighLine; grams: number; text: string } | null {
  const line = row.cells[at]
  if (!line) return null
  const weighed = line.what === 'all-of-preferment' ? partsOf(sheet, line, at) : [line]
  const finest = (of: typeof gramsDecimals) =>
    Math.max(...weighed.map(({ grams, resolutionGrams }) => of(grams, resolutionGrams)))
  const grams = weighed.reduce((sum, part) => sum + part.grams * part.reachesDough, 0)
  return {
    line,
    grams: Number(grams.toFixed(finest(gramsDecimals))),
    text: massFigure(grams, finest(massDecimals)),
  }
}

/** What a preferment that goes in whole was made of, weighed for the same batch. */
function partsOf({ batches }: Pick<WeighSheet, 'batches'>, whole: WeighLine, at: number) {
  const lines = batches[at]?.lines ?? []
  const parts = lines.filter(
    ({ into, prefermentId }) => into === 'preferment' && prefermentId === whole.prefermentId,
  )
  return parts.length > 0 ? parts : [whole]
}

function doughRow({ batches }: WeighSheet): WrittenRow {
  const cells = batches.map(({ doughGrams }) => roundedMass(doughGrams, 0))
  return { key: 'dough', head: 'Dough', cells, quiet: true }
}

/** The level of each batch from its rounded weights, all with as many decimals as show one figure of every uncertainty. */
function achievedRows(sheet: WeighSheet, unitOfMeasure: string): WrittenRow[] {
  const { batches, scales } = sheet
  const read = batches.flatMap(({ achieved }) => achieved ?? [])
  if (read.length === 0 || scales.length === 0) return []
  const decimals = Math.max(
    ...read.map(({ expandedUncertainty }) => uncertaintyDecimals(expandedUncertainty)),
  )
  const cells = (of: 'value' | 'expandedUncertainty') =>
    batches.map(({ achieved }) => (achieved ? decimalText(achieved[of], decimals) : none))
  const unit = shortUnit(unitOfMeasure)
  return [
    {
      key: 'achieved',
      head: unit === '' ? 'Achieved' : `Achieved, ${unit}`,
      cells: cells('value'),
      quiet: true,
    },
    { key: 'uncertainty', head: 'give or take', cells: cells('expandedUncertainty'), quiet: true },
    ...atFourteenRows(sheet, decimals),
  ]
}

/** The same doughs told at 14 % flour moisture, where every bag's is known; nothing elsewhere. */
function atFourteenRows({ batches }: WeighSheet, decimals: number): WrittenRow[] {
  if (batches.every(({ atFourteen }) => atFourteen === null)) return []
  const cells = batches.map(({ atFourteen }) =>
    atFourteen === null ? none : decimalText(atFourteen, Math.min(decimals, 2)),
  )
  return [{ key: 'at-fourteen', head: 'at 14 % flour moisture', cells, quiet: true }]
}

/** Decimals that show an uncertainty with one leading figure: 0.2, 0.04. Between none and four. */
function uncertaintyDecimals(uncertainty: number): number {
  if (!(uncertainty > 0)) return 1
  return Math.min(4, Math.max(0, Math.ceil(-Math.log10(uncertainty))))
}
