import { bendWeights, lineWeights } from '@/core/statistics/block-model/level-contrast.ts'
import { tHalfWidth } from '@/core/statistics/distributions/students-t.ts'
import { lookLevel, type TotalError } from '@/core/statistics/looks/look-level.ts'
import { noncentralityShown } from '@/core/statistics/power/noncentrality-shown.ts'
import { fTestPower } from '@/core/statistics/power/test-power.ts'
import { slopeHalfWidth, tukeyPower, tukeyWouldShow } from '@/core/statistics/power/would-show.ts'
import { chanceWith, sessionsForChance } from './as-good-chance.ts'
import { expectedError } from './expected-error.ts'
import { levelVariances } from './level-variances.ts'
import type { Spread } from './spread.ts'

/** What a trial consists of, as far as its power goes. */
export interface TrialDesign {
  levels: number
  /** The levels' values, for the slope; taken as evenly spread when left out. Null for a choice, which has no slope. */
  levelValues?: readonly number[] | null
  tasters: number
  /** Flights a session. */
  flights: number
  sessions: number
  /** What gets its level separately. */
  unit: 'batch' | 'piece'
  /** The smallest difference the baker would care about; null when none was named. */
  margin: number | null
  spread?: Spread
  /** Findings are looked at before the last of so many sessions: then each claim has to be clearer. */
  looks?: { most: number } | null
}

export type DetectableReason =
  | 'needs-two-levels'
  | 'needs-two-tasters'
  | 'needs-two-flights'
  | 'needs-two-sessions'
  | 'needs-two-blocks'
  /** The rung above answers the same and more. */
  | 'factor-answers'

/** A chance before the mix, and how many sessions (at the pieces: tasters) make it 8 in 10; null when sixty would not. */
export interface EndingChance {
  chance: number
  enough: number | null
}

export type DetectableRung =
  | {
      ok: true
      /** Of one level's mean, and its degrees of freedom in the comparison of levels. */
      standardError: number
      df: number
      /** Tukey's 95 % interval for any pair is the difference plus or minus this. */
      tukeyHalfWidth: number
      /** 95 % half-width of the straight line's rise from the first to the last level; null for a choice. */
      slopeHalfWidth: number | null
      /** The true difference of one pair that Tukey finds with power 0.8. */
      wouldShow: number
      /** The rise from the first to the last level, and how high a best in between stands over both ends, that show with power 0.8 when they were expected (at 4 %); null for a choice, a bend also with two levels. */
      riseShows: number | null
      humpShows: number | null
      /** Chance to show that an easy level is as good as the best within the margin, all levels equal, and the blocks that make it 8 in 10. */
      ending: { named: EndingChance; notNamed: EndingChance } | null
      /** Power of Tukey for a pair that differs by the margin; of the overall F when only that pair differs, the rest midway. */
      pairPowerAtMargin: number | null
      overallPowerAtMargin: number | null
    }
  | { ok: false; reason: DetectableReason }

export interface Detectable {
  thesePieces: DetectableRung
  theseDoughs: DetectableRung
  theFactor: DetectableRung
}

/**
 * What a design could detect, for each claim with its own error (`levelVariances`), from the spread of answers. Degrees of
 * freedom (blocks − 1)(levels − 1); for the slope, which leaves all but one contrast to the error, blocks × (levels − 1) − 1. Blocks are tasters, flights of the one session, sessions. The verdict's own questions (a rise, a best in between, the ending) have the levels' error and its degrees of freedom.
 */
export function detectable(design: TrialDesign): Detectable {
  const { levels, tasters, flights, sessions } = design
  if (levels < 2) return everyRung({ ok: false, reason: 'needs-two-levels' })
  if (tasters < 1) return everyRung({ ok: false, reason: 'needs-two-tasters' })
  const variance = levelVariances(design)
  const rung = (variance: number, blocks: number, reason: DetectableReason) =>
    blocks < 2
      ? ({ ok: false, reason } as const)
      : answered(design, variance, blocks, reason === 'needs-two-sessions')
  return {
    thesePieces: rung(variance.thesePieces, tasters, 'needs-two-tasters'),
    theseDoughs:
      sessions > 1
        ? { ok: false, reason: 'factor-answers' }
        : rung(variance.theseDoughs, flights, 'needs-two-flights'),
    theFactor: rung(variance.theFactor, sessions, 'needs-two-sessions'),
  }
}

const everyRung = (rung: DetectableRung): Detectable => ({
  thesePieces: rung,
  theseDoughs: rung,
  theFactor: rung,
})

function answered(
  design: TrialDesign,
  variance: number,
  blocks: number,
  ofFactor: boolean,
): DetectableRung {
  const { levels, margin } = design
  const df = (blocks - 1) * (levels - 1)
  const error = errorsOf(design, ofFactor)
  const { halfWidth, wouldShow } = tukeyWouldShow(variance, levels, df, 0.8, error.all)
  const values = design.levelValues === undefined ? evenly(levels) : design.levelValues
  const slopeDf = blocks * (levels - 1) - 1
  const bend = values !== null && values.length > 2
  return {
    ok: true,
    standardError: Math.sqrt(variance),
    df,
    tukeyHalfWidth: halfWidth,
    slopeHalfWidth: values === null ? null : slopeHalfWidth(variance, values, slopeDf),
    wouldShow,
    riseShows: values === null ? null : riseThatShows(variance, values, df, error.expected),
    humpShows: bend ? humpThatShows(variance, values, df, error.expected) : null,
    ending:
      margin === null ? null : endingOf(levels, variance * blocks, margin, blocks, error.boundWith),
    pairPowerAtMargin: margin === null ? null : tukeyPower(margin, variance, levels, df, error.all),
    overallPowerAtMargin:
      margin === null ? null : fTestPower(levels - 1, df, margin ** 2 / (2 * variance)),
  }
}

const evenly = (levels: number) => Array.from({ length: levels }, (_, index) => index)

/** The error of all comparisons and of a written expectation: of the factor, what the rule for early looks leaves at the planned session. */
function errorsOf({ levels, sessions, looks }: TrialDesign, ofFactor: boolean) {
  const most = looks?.most ?? 0
  const at = (total: TotalError, done: number) =>
    ofFactor && most > 2 ? lookLevel(total, { levels, most: Math.max(most, done), done }) : total
  return {
    all: at(0.05, sessions),
    expected: at(expectedError, sessions),
    /** Of a one-sided bound with another number of sessions. */
    boundWith: (done: number) => at(0.1, done) / 2,
  }
}

function riseThatShows(
  variance: number,
  values: readonly number[],
  df: number,
  error: number,
): number {
  const range = Math.max(...values) - Math.min(...values)
  return range * contrastThatShows(variance, lineWeights(values), df, error)
}

/** A parabola of this height over both ends, its top in the middle. */
function humpThatShows(
  variance: number,
  values: readonly number[],
  df: number,
  error: number,
): number {
  const weights = bendWeights(values)
  const range = Math.max(...values) - Math.min(...values)
  const middle = (Math.max(...values) + Math.min(...values)) / 2
  const ofOne = weights.reduce(
    (sum, weight, at) => sum + weight * (1 - ((2 * ((values[at] ?? 0) - middle)) / range) ** 2),
    0,
  )
  return contrastThatShows(variance, weights, df, error) / Math.abs(ofOne)
}

function contrastThatShows(
  variance: number,
  weights: readonly number[],
  df: number,
  error: number,
): number {
  const squares = weights.reduce((sum, weight) => sum + weight * weight, 0)
  return noncentralityShown(tHalfWidth(1 - error, df), df) * Math.sqrt(variance * squares)
}

function endingOf(
  levels: number,
  unitVariance: number,
  margin: number,
  blocks: number,
  errorWith: (count: number) => number,
) {
  const of = (named: boolean): EndingChance => {
    const open = { levels, unitVariance, margin, named, errorWith }
    return { chance: chanceWith(open, blocks), enough: sessionsForChance(open) }
  }
  return { named: of(true), notNamed: of(false) }
}
