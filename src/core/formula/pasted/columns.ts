import { type Heading, headingOf } from './headings.ts'

/** A line of the text as it is read; a row of a table becomes a line for each part of the formula that it fills. */
export interface TextRow {
  line: number
  /** As pasted. */
  raw: string
  /** With the units that stood in the head of its column. */
  text: string
  /** The part of the formula that its column stands for. */
  under: Heading | null
  /** It names columns, and no ingredient. */
  isHead: boolean
}

export interface ReadRows {
  rows: TextRow[]
  /** A table has more than one column of weights, and nothing says which is meant: the first is taken. */
  severalColumns: boolean
}

interface Column {
  at: number
  unit: string | null
  under: Heading | null
}
interface Head {
  split: Split
  cells: number
  nameAt: number
  columns: Column[]
}
type Split = (line: string) => string[]

const splits: readonly Split[] = [
  (line) => line.replace(/^\s*\||\|\s*$/gu, '').split('|'),
  (line) => line.split('\t'),
  (line) => line.split(';'),
  (line) => line.trim().split(/\s{2,}/u),
  (line) => line.split(/,(?=\S|\s|$)/u),
]
const gramCell =
  /(?:^|[\s(/])(g|gr|grams?|gramm|grammes?|grammi|kg|oz|ml)\.?\)?$|^(?:weight|gewicht|poids|peso|menge|amount|quantité|quantità)\s*[([]?\s*(?:in\s*)?(g|grams?|gramm|grammes|grammi|kg|oz)\s*[)\]]?$/iu
const percentCell = /%|percent|prozent|pourcent|percentual|(?:^|\s)(?:bp|b%)$/iu
const nameCell =
  /^(?:ingredients?|zutat(?:en)?|ingrédients?|ingredient[ei]|item|what|was|name|rohstoffe?|material|)$/iu
const unitOfAll =
  /(?:all |alles |tutto |tout )?(?:amounts? |weights? |mengen |angaben |quantités |quantità |dosi |ingredients |zutaten |ingrédients |ingredienti )?(?:are |sind |sono )?(?:in|en)\s+(g|grams?|gramm|grammes?|grammi|kg|oz)(?!\p{L})|^(?:ingredients|zutaten|ingrédients|ingredienti|formula|recipe|rezept)\s*\((g|grams?|gramm|grammes?|grammi|kg|oz)\)/iu
const bare = /^\d[\d.,'’\u00a0\u202f ]*$/u
const unitAtName = /[([]\s*(g|kg|oz|ml)\s*[)\]]\s*$/iu

/**
 * The lines of a pasted text. Under a head that names columns ("Ingredient | g | %", "Poolish | Dough | Total") each row is
 * written out with its units, part by part; under "all in grams" a bare number is one of grams.
 */
export function rowsOf(text: string): ReadRows {
  let head: Head | null = null
  let unit: string | null = null
  let severalColumns = false
  const rows = text.split(/\r\n|\r|\n/u).flatMap((raw, index): TextRow[] => {
    const plain: TextRow = {
      line: index + 1,
      raw: raw.trim(),
      text: raw.trim(),
      under: null,
      isHead: false,
    }
    if (raw.trim() === '') {
      return [plain]
    }
    const said = unitOfAll.exec(raw)
    if (said && !/\d/u.test(raw) && !/[|;\t]/u.test(raw)) {
      unit = said[1] ?? said[2] ?? 'g'
      return [{ ...plain, isHead: true }]
    }
    const found = headIn(raw)
    if (found) {
      head = found
      severalColumns ||=
        found.columns.filter((one) => one.under === null && one.unit !== '%').length > 1
      return [{ ...plain, isHead: true }]
    }
    const made = head ? rowIn(head, raw) : null
    if (made) return made.map((one) => ({ ...plain, ...one }))
    return [unit === null ? plain : { ...plain, text: withUnit(plain.text, unit) }]
  })
  return { rows, severalColumns }
}

/** The columns that a line names; null where it is none: it has figures, or fewer than one unit. */
function headIn(raw: string): Head | null {
  if (/\d/u.test(raw)) return null
  const single: Split = (line) => line.trim().split(/\s+/u)
  for (const split of [...splits, single]) {
    const cells = split(raw).map((cell) => cell.trim())
    if (cells.length < 2) continue
    const columns = cells.flatMap((cell, at) => columnOf(cell, at))
    const nameAt = cells.findIndex(
      (cell, at) => nameCell.test(cell) && !columns.some((one) => one.at === at),
    )
    const named = nameAt >= 0 || columns.length === cells.length - 1
    const measured = columns.some(({ unit }) => unit !== null)
    const manyParts = columns.filter(({ under }) => under !== null).length > 1
    if (!named || columns.length === 0 || !(measured || manyParts)) continue
    const at =
      nameAt >= 0 ? nameAt : cells.findIndex((_, index) => !columns.some((one) => one.at === index))
    return { split, cells: cells.length, nameAt: at, columns }
  }
  return null
}

function columnOf(cell: string, at: number): Column[] {
  if (nameCell.test(cell)) return []
  const weight = gramCell.exec(cell)
  const unit = weight ? (weight[1] ?? weight[2] ?? 'g') : percentCell.test(cell) ? '%' : null
  const words = cell
    .replace(gramCell, '')
    .replace(/[%()[\]]/gu, '')
    .trim()
  const under = words === '' || unit === '%' ? null : headingOf(words, false)
  const known = under !== null && under.kind !== 'method' && under.kind !== 'aside' ? under : null
  return unit !== null || known ? [{ at, unit, under: known }] : []
}

/** One row of a table written out as lines: "Flour 500 g 100 %"; null where it does not fit under the head. */
function rowIn(head: Head, raw: string): Pick<TextRow, 'text' | 'under'>[] | null {
  const cells = cellsOf(head, raw)
  if (!cells) return null
  const whole = cells[head.nameAt] ?? ''
  const name = whole.replace(unitAtName, '').trim()
  const usual =
    unitAtName.exec(whole)?.[1] ??
    head.columns.find((one) => one.unit !== '%' && one.unit)?.unit ??
    ''
  const value = ({ at, unit }: Column) => {
    const cell = (cells[at] ?? '').trim()
    return bare.test(cell) ? `${cell} ${unit ?? usual}` : cell
  }
  const filled = head.columns.filter((column) => /\d/u.test(cells[column.at] ?? ''))
  if (name === '' || filled.length === 0) return null
  const weights = filled.filter((one) => one.unit !== '%')
  const percents = filled.filter((one) => one.unit === '%')
  const parts = weights.filter(({ under }) => under !== null)
  if (
    parts.length > 1 ||
    (parts.length === 1 && head.columns.filter((one) => one.under).length > 1)
  )
    return parts.map((one) => ({ text: `${name} ${value(one)}`, under: one.under }))
  const [weight] = weights
  const [percent] = percents
  return [
    {
      text: [name, weight && value(weight), percent && value(percent)].filter(Boolean).join(' '),
      under: null,
    },
  ]
}

function cellsOf(head: Head, raw: string): string[] | null {
  const cells = head.split(raw).map((cell) => cell.trim())
  const last = Math.max(head.nameAt, ...head.columns.map(({ at }) => at))
  if (cells.length === head.cells) return cells
  if (
    cells.length > 1 &&
    cells.length < head.cells &&
    cells.length > head.nameAt &&
    head.nameAt === 0 &&
    head.columns.length > 1
  )
    return cells
  const found = /^(.*?\p{L}.*?)((?:\s+(?:\d[\d.,'’]*\s?%?|[-–—]))+)$/u.exec(raw.trim())
  if (!found || head.nameAt !== 0) return null
  const values = (found[2] ?? '').trim().split(/\s+/u)
  return values.length <= last ? [found[1] ?? '', ...values] : null
}

/** A bare number of a line with the unit that holds for all: "Flour 500" or "500 flour" under "all in grams". */
function withUnit(text: string, unit: string): string {
  if (/[\d\u00bc-\u00be]$/u.test(text)) return `${text} ${unit}`
  return text.replace(/^(\d+(?:['’]\d{3})*(?:[.,]\d+)?)\s+(?=\p{L}{3,})/u, `$1 ${unit} `)
}
