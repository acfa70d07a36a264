import { questionNamesLevel } from '@/core/trial/question-names-level.ts'
import type { Summary } from '@/notebook/summary-record.ts'

/** Where a trial stands and where its next work is. */
export const stageWords: Record<Summary['stage'], { words: string; place: string }> = {
  planning: { words: 'In planning', place: 'plan' },
  working: { words: 'At the bench', place: 'bench' },
  tasting: { words: 'Tasting, under cover', place: 'tasting' },
  sealed: { words: 'Under cover', place: 'tasting' },
  answered: { words: 'Answered', place: 'findings' },
}

/** What a trial is called in the book: its question, or, while its tasting is sealed, words that name no level. */
export function titleOf({
  question,
  levels,
  sealed,
}: Pick<Summary, 'question' | 'levels' | 'sealed'>): string {
  return sealed && questionNamesLevel(question, levels) ? 'A trial under cover' : question
}
