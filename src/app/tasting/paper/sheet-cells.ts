import type { Answer } from '@/core/seal/blind/answer.ts'
import type { BlindView, Question } from '@/core/seal/blind/blind-view.ts'
import { pointsOf } from '@/core/seal/blind/check-answers.ts'
import { rankingTrouble, readRanked } from '@/core/seal/blind/ranked-codes.ts'
import { rankingTroubleText } from '@/core/wording/tasting/ranking-text.ts'
import { listText } from '@/core/wording/words/list-text.ts'

/** Which typing of a sheet: the first, or a second by another hand. */
export type Typing = 'first' | 'again'

type Texts = Readonly<Record<string, string>>

/** A cell of a sheet: one code's answer to one question. */
export interface Cell {
  code: string
  question: Question
}

export const cellField = (typing: Typing, { code, question }: Cell) =>
  `${typing}/${code}/${question.responseId}`

/** The cells of a sheet that nothing is sealed of yet, in its order: code by code, question by question. */
export function cellsOf({
  servings,
  questions,
}: Pick<BlindView, 'servings' | 'questions'>): Cell[] {
  const open = servings.filter(({ done }) => !done)
  return open.flatMap(({ code }) => questions.map((question) => ({ code, question })))
}

/** What is wrong with a typed cell: empty text where nothing is. 0 stands for a row that was left out. */
export function cellTrouble({ question }: Cell, text: string): string {
  const points = pointsOf(question.scale)
  if (text === '' || text === '0') return ''
  const value = Number(text.replace(',', '.'))
  if (!points) return Number.isFinite(value) ? '' : `${question.name} wants a number.`
  const fits = Number.isInteger(value) && value >= points.least && value <= points.most
  return fits
    ? ''
    : `${question.name} goes from ${points.least} to ${points.most}; 0 means left out.`
}

/** Cells that are still empty or wrong in a typing. */
export const openCells = (cells: readonly Cell[], typing: Typing, texts: Texts): Cell[] =>
  cells.filter((cell) => {
    const text = texts[cellField(typing, cell)] ?? ''
    return text === '' || cellTrouble(cell, text) !== ''
  })

/** The answers of one code as they were typed. */
export function typedAnswers(cells: readonly Cell[], code: string, texts: Texts): Answer[] {
  return cells
    .filter((cell) => cell.code === code)
    .map((cell) => {
      const { responseId } = cell.question
      const text = texts[cellField('first', cell)] ?? ''
      return text === '0' || text === ''
        ? { responseId, value: null, why: 'left out on paper' }
        : { responseId, value: Number(text.replace(',', '.')) }
    })
}

/** What stands at the end of a sheet: the order, a set of which one code was ringed, or the guess of the usual one. */
export interface EndOfSheet {
  field: string
  label: string
  codes: readonly string[]
  /** The codes as they were offered, of a set; null for the order and the guess. */
  set: readonly string[] | null
  /** Of the order: whether codes may share a place; null for what is one code. */
  order: { ties: boolean } | null
}

/** The draft's field of an end; that of the first typing is its name alone. */
export const endField = (typing: Typing, { field }: Pick<EndOfSheet, 'field'>) =>
  typing === 'first' ? field : `again/${field}`

/** What is wrong with what was typed of an end of a sheet; null where it may be sealed. */
export function endTrouble({ label, codes, order }: EndOfSheet, text: string): string | null {
  if (!order)
    return codes.includes(text.trim()) ? null : `${label}: type one of ${listText(codes, 'or')}.`
  const trouble = rankingTrouble(readRanked(text), { ...order, codes })
  return trouble && rankingTroubleText(trouble)
}

/** The questions at the end of a sheet that nothing is sealed of yet. */
export function endsOf({
  servings,
  sets,
  ranking,
  guess,
}: Pick<BlindView, 'servings' | 'sets' | 'ranking' | 'guess'>): EndOfSheet[] {
  const open = sets.filter(({ done }) => !done)
  return [
    ...(ranking && !ranking.done
      ? [
          {
            field: 'ranking',
            label: ranking.ties
              ? 'The order, first to last (= between those that share a place)'
              : 'The order, first to last',
            codes: ranking.codes,
            set: null,
            order: { ties: ranking.ties },
          },
        ]
      : []),
    ...open.map(({ codes, offered }) => ({
      field: `set/${codes.join('-')}`,
      label: `Ringed of ${codes.join(', ')}`,
      codes: offered,
      set: codes,
      order: null,
    })),
    ...(guess && !guess.done
      ? [
          {
            field: 'usual',
            label: 'Taken for the usual one (0: no idea)',
            codes: ['0', ...servings.map(({ code }) => code)],
            set: null,
            order: null,
          },
        ]
      : []),
  ]
}
