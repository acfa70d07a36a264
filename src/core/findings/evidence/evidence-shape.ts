import * as z from 'zod/mini'
import { orAbsent } from '@/core/findings/reason.ts'
import { fiellerShape, levelIdShape, meanShape } from '@/core/findings/rungs/rung-shape.ts'

const directions = ['rises', 'falls', 'best-inside', 'no-difference'] as const

/**
 * What was asked of a response before the first mix, and so what carries its verdict: the line, the bend, no difference, the
 * clearer of line and bend (nothing written down), all pairs (a choice), or every level against the usual.
 */
export const askedShape = z.strictObject({
  question: z.enum(['line', 'bend', 'no-difference', 'line-or-bend', 'pairs', 'usual']),
  expected: z.nullable(z.enum(directions)),
})

/**
 * The p each claim must reach: all comparisons together, the expected and the surprising chain, and twice the error of a
 * one-sided bound. `look` when sessions are looked at before the last; `added` when there are more sessions than were written
 * first, with the true rate of a false claim.
 */
export const allowanceShape = z.strictObject({
  all: z.number(),
  expected: z.number(),
  surprise: z.number(),
  twiceOneSided: z.number(),
  look: z.nullable(z.strictObject({ done: z.number(), most: z.number() })),
  added: z.nullable(z.strictObject({ done: z.number(), most: z.number(), rate: z.number() })),
})

/** A difference that is shown: mean of b less mean of a. */
export const shownPairShape = z.strictObject({
  a: levelIdShape,
  b: levelIdShape,
  difference: z.number(),
  p: z.number(),
})

/** The way from the first to the last level with its interval at the confidence of its chain; `beyond` when all of it lies beyond the margin. */
const sizeShape = z.strictObject({
  between: z.tuple([levelIdShape, levelIdShape]),
  difference: z.number(),
  low: z.number(),
  high: z.number(),
  confidence: z.number(),
  beyond: z.boolean(),
})

/** One thing that is shown of the factor. `unexpected`: through the smaller share of error kept for surprises, or against the direction expected. */
export const shownShape = z.discriminatedUnion('is', [
  z.strictObject({
    is: z.literal('line'),
    goes: z.enum(['rises', 'falls']),
    unexpected: z.boolean(),
    p: z.number(),
    size: z.nullable(sizeShape),
    pairs: z.array(shownPairShape),
  }),
  z.strictObject({
    is: z.literal('bend'),
    /** The middle stands above or below the line between the ends. */
    middle: z.enum(['high', 'low']),
    unexpected: z.boolean(),
    p: z.number(),
    /** The inner levels together stand beyond each end: the top (or bottom) lies in between. */
    inside: z.boolean(),
    pairs: z.array(shownPairShape),
  }),
  z.strictObject({
    is: z.literal('pairs'),
    against: z.enum(['all', 'usual']),
    unexpected: z.boolean(),
    p: z.number(),
    pairs: z.array(shownPairShape),
  }),
])

/** Too small to matter: the largest difference and its one-sided half-width against the margin, of all pairs and against the usual. */
export const tooSmallShape = z.strictObject({
  margin: z.number(),
  largest: z.number(),
  allPairs: z.boolean(),
  usual: z.nullable(z.strictObject({ level: levelIdShape, within: z.boolean() })),
})

/** As good as the best: for each level how far below the best other it may be at most, and whether that is within the margin. */
export const asGoodShape = z.strictObject({
  margin: z.number(),
  /** The highest by its mean in the better direction. */
  best: levelIdShape,
  named: z.nullable(levelIdShape),
  levels: z.array(
    z.strictObject({
      level: levelIdShape,
      /** Its mean less the best of the others, turned so that below 0 is worse; the lower limit it is judged by. */
      short: z.number(),
      low: z.number(),
      passes: z.boolean(),
    }),
  ),
})

/** The levels the best may be at, and the stretch they stand for; an end among them may hide a best past it. */
export const placeShape = z.strictObject({
  candidates: z.array(levelIdShape),
  low: z.number(),
  high: z.number(),
  openLow: z.boolean(),
  openHigh: z.boolean(),
  /** The curve's turning point with its Fieller interval, of use only if the hump is even; not given where the curve does not fit. */
  even: z.nullable(z.strictObject({ at: z.number(), set: fiellerShape })),
})

/**
 * Freshness (minutes since the oven) or order (position) at the rung that answers: how far apart the levels' own means of it
 * lie, its slope with a 95 % interval, and the levels compared at its mean. `told` is false when allowing for it makes a
 * difference more than twice as wide: then it and the level cannot be told apart.
 */
export const besideShape = z.strictObject({
  apart: z.number(),
  answer: orAbsent(
    z.strictObject({
      from: z.enum(['tasters', 'flights', 'units']),
      slope: z.number(),
      low: z.number(),
      high: z.number(),
      df: z.number(),
      widening: z.number(),
      told: z.boolean(),
      f: z.number(),
      df1: z.number(),
      df2: z.number(),
      p: z.number(),
      means: z.array(meanShape),
    }),
  ),
})

export type Asked = z.infer<typeof askedShape>
export type Allowance = z.infer<typeof allowanceShape>
export type ShownPair = z.infer<typeof shownPairShape>
export type Shown = z.infer<typeof shownShape>
export type ShownLine = Extract<Shown, { is: 'line' }>
export type ShownBend = Extract<Shown, { is: 'bend' }>
export type TooSmall = z.infer<typeof tooSmallShape>
export type AsGood = z.infer<typeof asGoodShape>
export type Place = z.infer<typeof placeShape>
export type Beside = z.infer<typeof besideShape>
