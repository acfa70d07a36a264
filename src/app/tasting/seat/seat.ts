import type { DraftKeeping } from '@/app/kit/field/use-draft.ts'
import type { Answer } from '@/core/seal/blind/answer.ts'
import type { BlindView } from '@/core/seal/blind/blind-view.ts'

/** All that the device gives to a taster who sits down at it. */
export interface Seat {
  /** The taster's own initials or code. */
  name: string
  view: BlindView
  /** Where the unfinished ballot of a code is kept. */
  draftOf: (code: string) => DraftKeeping
  now: () => number
  sealBallot: (code: string, answers: Answer[], startedAt: number) => Promise<void>
  sealSet: (codes: readonly string[], pickedCode: string, startedAt: number) => Promise<void>
  onLeave: () => void
}
