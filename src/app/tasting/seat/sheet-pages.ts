import type { BlindServing, BlindView } from '@/core/seal/blind/blind-view.ts'
import { referencesText } from '@/core/wording/tasting/reference-text.ts'

/** How a taster's codes stand on paper. */
export interface SheetPages {
  pages: BlindServing[][]
  /** The height of one question's row. */
  rowMillimetres: number
  /** Notes have a line of their own under the questions; else they are written under the code. */
  noteLine: boolean
}

/** What A4 and Letter both leave for codes under the name: less on the first page, which has the rule. */
const roomMillimetres = { first: 230, later: 240 } as const
/** The line between two codes, and the heading over those of a flight. */
const millimetres = { line: 0.5, flight: 7, order: 17, set: 22, guess: 8, compared: 5 } as const

/** From the most comfortable to the closest that a ring can still be drawn in. */
const rows = [
  { rowMillimetres: 8, noteLine: true },
  { rowMillimetres: 7.2, noteLine: true },
  { rowMillimetres: 6.6, noteLine: true },
  { rowMillimetres: 7.2, noteLine: false },
  { rowMillimetres: 6.6, noteLine: false },
] as const

type Sheet = Pick<BlindView, 'servings' | 'questions' | 'sets' | 'ranking' | 'guess'>

/**
 * The pages of one taster's sheet: rows as high as they can be with two pages in all, which holds for twelve codes of up to five
 * questions; where even the closest takes more, the comfortable ones on as many as they take. A code is never parted.
 */
export function sheetPages(sheet: Sheet): SheetPages {
  const tried = rows.map((how) => ({ ...how, pages: filled(sheet, how) }))
  const [comfortable] = tried
  if (!comfortable) throw new Error('a sheet has rows')
  return tried.find(({ pages }) => pages.length <= 2) ?? comfortable
}

/** True for the first code of a flight, where there are several. */
export function beginsFlight(servings: readonly BlindServing[], at: number): boolean {
  const flight = servings[at]?.flight
  return flight !== undefined && servings[at - 1]?.flight !== flight
}

/** Questions with pieces to compare with, and what is said of these on the first page. */
export function comparedWith({ questions }: Pick<BlindView, 'questions'>) {
  return questions.flatMap(({ name, scale }) => {
    const text = referencesText(scale)
    return text === '' ? [] : [{ name, text }]
  })
}

function filled(sheet: Sheet, how: Pick<SheetPages, 'rowMillimetres' | 'noteLine'>) {
  const { servings, questions } = sheet
  // A code itself is as high as two rows and a half.
  const lines = Math.max(2.5, questions.length + (how.noteLine ? 1 : 0))
  const pages: BlindServing[][] = [[]]
  // Each question that is compared takes a line on the first page, and its allergens one for all.
  const compared = comparedWith(sheet).length
  const room = () => (pages.length === 1 ? roomMillimetres.first : roomMillimetres.later)
  let used = compared === 0 ? 0 : (compared + 1) * millimetres.compared
  for (const [at, serving] of servings.entries()) {
    const heading = beginsFlight(servings, at) ? millimetres.flight : 0
    const needs = lines * how.rowMillimetres + millimetres.line + heading
    if (pages.at(-1)?.length && used + needs > room()) {
      pages.push([])
      used = 0
    }
    pages.at(-1)?.push(serving)
    used += needs
  }
  // What is asked at the end stands under the last code, or on a page of its own.
  if (used + endMillimetres(sheet) > room()) pages.push([])
  return pages
}

function endMillimetres({ sets, ranking, guess }: Sheet): number {
  return (
    (ranking ? millimetres.order : 0) +
    sets.length * millimetres.set +
    (guess ? millimetres.guess : 0)
  )
}
