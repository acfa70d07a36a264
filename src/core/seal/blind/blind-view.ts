import type { AtTable, RankingAsked } from '@/core/trial/at-table.ts'
import type { FactorKind } from '@/core/trial/factor.ts'
import type { TellApart } from '@/core/trial/plan-record.ts'
import type { AnswerScale } from '@/core/trial/response.ts'
import type { Answer } from './answer.ts'

/** One thing that every taster is asked of every serving. */
export interface Question {
  responseId: string
  name: string
  scale: AnswerScale
  /** What the word means; null where the plan gives none. */
  definition: string | null
  /** Asked first and alone. */
  liking: boolean
}

/** A serving as its taster knows it. */
export interface BlindServing {
  code: string
  /** Where whoever tastes plated for themselves: the place of its plate, which is all that it goes by. */
  plate?: number
  /** Among this taster's servings, from 1. */
  position: number
  /** Which flight it comes in, from 1; left out where there is one alone. */
  flight?: number
  done: boolean
  /** What this taster sealed of it, and when they first had the code; null before that. */
  sealed: { answers: Answer[]; startedAt: number | null; words: string | null } | null
}

/** A set to tell apart: the codes before the taster, and those they may pick. */
export interface BlindSet {
  codes: string[]
  offered: string[]
  done: boolean
  /** They lie on plates that their taster shuffled: 1, 2 and so on, in the order of the codes. */
  onPlates?: boolean
}

/** The question at the end. `most`: which has most of what is changed, by its name and kind; else which was the usual one. */
export interface BlindGuess {
  done: boolean
  most?: { factorName: string; factorKind: FactorKind }
}

/** The samples in one order, asked when all are scored. */
export interface BlindRanking extends RankingAsked {
  done: boolean
  /** What is put in order, rising; of plates those of the last round, from the left. */
  codes: string[]
}

/**
 * All that a taster's screen, print or file may hold: codes, positions, questions and the taster's own answers. There is no
 * place in it for a level, a label, a letter, a weight or the identity of a dough, piece or serving. The pages for tasters
 * (app/tasting/seat) are given this and nothing else; the lint lets them reach no record it is made from.
 */
export interface BlindView {
  sessionNumber: number
  servings: BlindServing[]
  /** The code to offer next; null when all servings are scored. */
  nextCode: string | null
  /** The warm-up: offered first, not scored. */
  warmUpCode: string | null
  /** Each taster takes it at their own seat, before their first; else it came to all of them at once. */
  warmUpAtSeat: boolean
  sets: BlindSet[]
  /** How the sets are to be told apart; null when there are none. */
  tellApart: Pick<TellApart, 'test' | 'attribute' | 'asks'> | null
  questions: Question[]
  /** Seconds from one serving to the next, and longer pauses. */
  rest: Pick<AtTable, 'restSeconds' | 'pauseAfter' | 'pauseSeconds'>
  /** Asked before the sets and the guess; null where nothing is ranked. */
  ranking: BlindRanking | null
  /** Asked when all are scored; null where nothing is guessed. */
  guess: BlindGuess | null
  complete: boolean
}
