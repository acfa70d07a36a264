import { coveredTitle } from '@/core/seal/covered-title.ts'
import type { Summary } from '@/notebook/summary-record.ts'

/** Where a trial stands and where its next work is. Between two sessions it says which comes next. */
export function stageWords({ stage, sessionsDone }: Pick<Summary, 'stage' | 'sessionsDone'>): {
  words: string
  place: string
} {
  switch (stage) {
    case 'planning':
      return { words: 'In planning', place: 'plan' }
    case 'working':
      return { words: 'At the bench', place: 'bench' }
    case 'tasting':
      return { words: 'Tasting, under cover', place: 'tasting' }
    case 'sealed':
      return { words: 'Under cover', place: 'tasting' }
    case 'between':
      return { words: `Session ${sessionsDone + 1} comes next`, place: 'plan' }
    case 'answered':
      return { words: 'Finished', place: 'findings' }
  }
}

/** What a trial is called in the book: its question, or, while its tasting is sealed, words that name no level. */
export function titleOf({
  question,
  levels,
  sealed,
}: Pick<Summary, 'question' | 'levels' | 'sealed'>): string {
  return sealed ? coveredTitle(question, levels) : question
}
