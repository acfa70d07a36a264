import { rankedText, readRanked } from '@/core/seal/blind/ranked-codes.ts'
import {
  type Cell,
  cellField,
  cellTrouble,
  type EndOfSheet,
  endField,
  endTrouble,
  type Typing,
} from './sheet-cells.ts'

type Texts = Readonly<Record<string, string>>

/** What two hands read differently on one sheet: a score, the order, a ringed code or the guess. */
export interface Difference {
  /** What the sheet is looked at again for: “521, Liking”. */
  label: string
  /** The draft's field in each of the two typings. */
  fields: Readonly<Record<Typing, string>>
  /** One digit of a scale, which is taken as it is typed; all else is taken by a press. */
  digit: boolean
  maxLength: number
  /** What is wrong with a text that would settle it; empty where nothing is. */
  trouble: (text: string) => string
}

/** Everything that is typed both times and read differently, in the order of the sheet. */
export function differencesOf(
  cells: readonly Cell[],
  ends: readonly EndOfSheet[],
  texts: Texts,
): Difference[] {
  return [...cells.map(ofCell), ...ends.map(ofEnd)].flatMap(({ same, ...difference }) => {
    const { first, again } = difference.fields
    const [one = '', other = ''] = [texts[first], texts[again]]
    return one.trim() === '' || other.trim() === '' || same(one) === same(other) ? [] : [difference]
  })
}

/** A difference that may be there; two texts say the same where `same` of them is equal. */
interface Typed extends Difference {
  same: (text: string) => string
}

function ofCell(cell: Cell): Typed {
  const measured = cell.question.scale.kind === 'measured'
  return {
    label: `${cell.code}, ${cell.question.name}`,
    fields: { first: cellField('first', cell), again: cellField('again', cell) },
    digit: !measured,
    maxLength: measured ? 8 : 1,
    trouble: (text) => cellTrouble(cell, text),
    same: (text) => text.replace(',', '.'),
  }
}

function ofEnd(end: EndOfSheet): Typed {
  return {
    label: end.order ? 'The order, first to last' : end.label,
    fields: { first: endField('first', end), again: endField('again', end) },
    digit: false,
    maxLength: end.order ? end.codes.length * 6 : 3,
    trouble: (text) => endTrouble(end, text) ?? '',
    same: end.order ? asOrder : (text) => text.trim(),
  }
}

/** Codes that share a place stand beside each other in no order: “877=402” says what “402 = 877” says. */
const asOrder = (text: string) =>
  rankedText(
    readRanked(text).map((place) => place.toSorted((one, other) => one.localeCompare(other))),
  )
