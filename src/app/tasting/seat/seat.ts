import type { DraftKeeping } from '@/app/kit/field/use-draft.ts'
import type { Answer } from '@/core/seal/blind/answer.ts'
import type { BlindView } from '@/core/seal/blind/blind-view.ts'
import type { Ranked } from '@/core/seal/blind/ranked-codes.ts'

/** What a taster seals of one code. */
export interface SealedAnswers {
  answers: Answer[]
  /** In their own words; empty where they said nothing. */
  words: string
  startedAt: number
}

/** All that the device gives to a taster who sits down at it. */
export interface Seat {
  /** The taster's own initials or code. */
  name: string
  view: BlindView
  /** Allergens that any of the servings may hold, by name. */
  allergens: readonly string[]
  /** They were told of them and went on. */
  heard: boolean
  onHeard: () => Promise<void>
  /** They had better not taste. */
  onDecline: () => Promise<void>
  /** Where the unfinished ballot of a code is kept. */
  draftOf: (code: string) => DraftKeeping
  now: () => number
  sealBallot: (code: string, sealed: SealedAnswers) => Promise<void>
  sealSet: (codes: readonly string[], pickedCode: string, startedAt: number) => Promise<void>
  /** The samples in their order, as `Ranked`. */
  sealRanking: (ranked: Ranked, startedAt: number) => Promise<void>
  /** The code they take for the usual one; null for no idea. */
  sealGuess: (code: string | null, startedAt: number) => Promise<void>
  /** A deliberate press, which is logged; `finished` where nothing is left to do. */
  onLeave: (finished: boolean) => Promise<void> | void
}
