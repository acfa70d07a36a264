import type { ResponseFindings } from '@/core/findings/response-findings-shape.ts'
import { asSentenceStart, countText, listText } from '@/core/wording/words/list-text.ts'
import { midSentence } from '@/core/wording/words/mid-sentence.ts'
import type { Naming } from './answer-of-rung.ts'
import { headline } from './headline.ts'

/** What was seen of a response that is not the main one: one sentence under its name, never a second verdict. */
export function alsoSeen(found: ResponseFindings, naming: Naming): string {
  return `${found.name}: ${headline(found, naming).shown}`
}

/** What else was recorded, by name. */
export function alsoSeenSentence([, ...others]: readonly Pick<ResponseFindings, 'name'>[]): string {
  return `${listText(others.map(({ name }, index) => (index === 0 ? name : midSentence(name))))}: a hint each, beside the answer.`
}

/** One word on how many were looked at, since one of twenty differs by chance alone; empty where there are none. */
export function lookedAt(others: number): string {
  if (others === 0) return ''
  return `${asSentenceStart(countText(others, 'response'))} beside the main one ${others === 1 ? 'was' : 'were'} looked at, each at 5 %: what they show is a hint, and worth a trial of its own.`
}
