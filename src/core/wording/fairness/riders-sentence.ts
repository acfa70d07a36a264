import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { asSentenceStart, listText } from '@/core/wording/words/list-text.ts'
import { midSentence } from '@/core/wording/words/mid-sentence.ts'
import { fairnessText } from './fairness-text.ts'

const most = 3

/** What rode along with the level on the day, by name: the first three and how many more. */
export function ridersSentence(items: readonly FairnessItem[], plan: Plan): string {
  if (items.length === 0)
    return 'The log shows nothing that rode along with the level and is large enough to name.'
  const titles = [...new Set(items.map((item) => fairnessText(item, plan).title))]
  const named = titles
    .slice(0, most)
    .map((title, index) => (index === 0 ? title : midSentence(title)))
  const more = titles.length - named.length
  return `${asSentenceStart(listText(more > 0 ? [...named, `${more} more`] : named))}.`
}
