import type { EventOf } from '@/core/session/event-record.ts'
import { countText } from '@/core/wording/words/list-text.ts'

export type FailureKind = EventOf<'failure'>['what']

const words: Record<FailureKind, string> = {
  stuck: 'stuck',
  torn: 'torn',
  burnt: 'burnt',
  gummy: 'gummy, not baked through',
  rescued: 'rescued',
  'not-served': 'not served',
  other: 'failed in another way',
}

/** A failure in one word, as it is pressed at the bench and listed in the report. */
export function failureText(kind: FailureKind): string {
  return words[kind]
}

/** How often a level failed: "never failed", "failed once", "failed three times". */
export function failedTimes(count: number): string {
  if (count === 0) return 'never failed'
  return count === 1 ? 'failed once' : `failed ${countText(count, 'time')}`
}
