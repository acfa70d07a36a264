import type { LockedPart } from '@/core/seal/locked-change.ts'
import { asSentenceStart, listText } from '@/core/wording/words/list-text.ts'

const names: Readonly<Record<LockedPart, string>> = {
  expectation: 'what was expected',
  'written-first': 'what was written down first beside it',
  'planned-sessions': 'the number of sessions',
  'main-response': 'the main response',
  better: 'what is better in the main response',
  margin: 'the margin of the main response',
}

/** What a locked part is called in the middle of a sentence. */
export const lockedPartName = (part: LockedPart): string => names[part]

/** Why a change of a locked plan was not made, and the way that is open. */
export function lockedText(parts: readonly LockedPart[]): string {
  const what = asSentenceStart(listText(parts.map((part) => names[part])))
  const stand = parts.length === 1 ? 'stands as it was' : 'stand as they were'
  return `Not changed: ${what} ${stand} at the first mix. A trial that follows this one can ask it another way.`
}

/** Why a remedy is not offered in this trial, before the press that takes it into the next one. */
export const remedyLockedText =
  'The lock of the first mix keeps this trial as it was planned. In a trial that follows it:'
