import type { Level } from '@/core/trial/level.ts'
import { questionNamesLevel } from '@/core/trial/question-names-level.ts'

/** What stands for a sealed trial's question wherever it may be read: the question itself, or words that can name no level. */
export function coveredTitle(question: string, levels: readonly Pick<Level, 'label'>[]): string {
  return questionNamesLevel(question, levels) ? 'A trial under cover' : question
}
