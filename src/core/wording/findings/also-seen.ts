import { isPresent } from '@/core/findings/reason.ts'
import type { ResponseFindings } from '@/core/findings/response-findings-shape.ts'
import { type Naming, shownRung } from './answer-of-rung.ts'
import { reasonText } from './reason-text.ts'
import { verdictSentence } from './verdict-sentence.ts'

/** What was seen of a response that is not the main one: one sentence under its name, never a second verdict. */
export function alsoSeen(found: ResponseFindings, naming: Naming): string {
  if (shownRung(found) === null) {
    const reason = isPresent(found.rows) ? found.factor : found.rows
    return `${found.name}: ${isPresent(reason) ? 'described only.' : reasonText(reason)}`
  }
  const { shown } = verdictSentence(found, naming)
  return `${found.name}: ${shown}`
}
