import type { FactorFacts } from '@/core/findings/findings-document.ts'
import type { LevelId } from '@/core/findings/rungs/rung-shape.ts'
import type { RankingAsked } from '@/core/trial/at-table.ts'
import type { Expectation } from '@/core/trial/expectation.ts'
import type { Better } from '@/core/trial/response.ts'

/** What a level is called: its value in the factor's unit, for a choice its label. */
export type LevelName = number | string

/** A level of the score table, known by its id: two options may be called the same. */
export interface ScoreLevel {
  id: LevelId
  name: LevelName
  value: number | null
  label: string
  control: boolean
}

/** A response of the score table, known by its id, with what a good answer is and the smallest difference that matters. */
export interface ScoreResponse {
  id: string
  name: string
  scale: 'nine-point' | 'just-about-right' | 'measured'
  better: Better
  margin: number | null
  /** Cells that have no score because the dough or piece failed. */
  failures: number
}

/**
 * One row: session, flight, level, taster, with a value or null for every response. `level` is an index into the
 * table's levels; batch and piece are opaque keys; `handled` is the level as handled, in the factor's unit, where logged.
 */
export interface ScoreRow {
  session: string
  flight: string
  batch: string
  piece: string
  level: number
  taster: string | null
  position: number | null
  minutes: number | null
  handled: number | null
  values: readonly (number | null)[]
}

/** Answers of one tell-apart test over all its sets. */
export interface TellApartCount {
  test: 'triangle' | 'duo-trio' | 'paired'
  between: [LevelId, LevelId]
  n: number
  correct: number
  /** Of each person who answered, the share of right answers. */
  people: readonly number[]
  /** Sessions, each with two pieces of its own, in which it was answered. */
  sessions: number
}

/** One taster's order of one session: each level's rank among those that they had, 1 first, ties with their mean; null for none. */
export interface GivenOrder {
  tasterId: string
  sessionId: string
  ranks: (number | null)[]
}

/** The orders of one question over all sessions that asked it. */
export interface TrialRanking extends RankingAsked {
  orders: GivenOrder[]
  /** Orders of tasters who knew which was which: kept, and in no finding. */
  knowing: number
}

/** What a level costs beside its score: failures among its pieces, hands-on time, and how it handled. */
export interface LevelEase {
  level: LevelId
  failures: number
  pieces: number
  handsSeconds: number | null
  /** Mean handling score on the nine-point scale, turned so that more is easier; null when none was given. */
  handling: number | null
}

/** What was written down first, as far as it decides how clear an answer must be. */
export interface WrittenForScores {
  /** The level hoped to do as well as the best, an index into the table's levels. */
  hoped: number | null
  /** The most sessions; null when no number was written. */
  mostSessions: number | null
  /** Findings are, or were, looked at before the last session. */
  early: boolean
  againstUsual: boolean
}

/**
 * Scores without any memory of where they came from: a trial or a spreadsheet. Levels rise in value, those of a choice
 * keep their order; the main response stands first.
 */
export interface ScoreTable {
  factor: FactorFacts
  unit: 'batch' | 'piece'
  levels: ScoreLevel[]
  responses: ScoreResponse[]
  rows: ScoreRow[]
  expectation: Expectation | null
  /** What else was written before the first mix; nothing of a table from elsewhere. */
  written?: WrittenForScores | null
  /** Tasters who knew which was which, by id; nothing of a table from elsewhere. */
  knowing?: readonly string[]
  tellApart: TellApartCount[]
  /** The orders of tasters; nothing of a table from elsewhere. */
  rankings?: readonly TrialRanking[]
  /** Doughs or loaves of a level were made again in no block: with one session the table is completely randomised. */
  replicated?: boolean
  /** In the order of the levels; null when nothing but scores is known. */
  ease: LevelEase[] | null
}
