import type { Summary } from './summary-record.ts'

/** The order of the home list: newest work first, and of the same moment by id. */
export function newestFirst(
  a: Pick<Summary, 'lastAt' | 'trialId'>,
  b: Pick<Summary, 'lastAt' | 'trialId'>,
): number {
  return b.lastAt - a.lastAt || (a.trialId < b.trialId ? -1 : 1)
}

export type BookOrder = 'worked' | 'made' | 'question' | 'factor'

/** The orders that a person may ask for instead; what is equal in one stands with the newest work first. */
export const inOrder: Readonly<Record<BookOrder, (one: Summary, other: Summary) => number>> = {
  worked: newestFirst,
  made: (one, other) => other.createdAt - one.createdAt || newestFirst(one, other),
  question: (one, other) =>
    one.question.localeCompare(other.question, 'en') || newestFirst(one, other),
  factor: (one, other) =>
    one.factorName.localeCompare(other.factorName, 'en') || newestFirst(one, other),
}
