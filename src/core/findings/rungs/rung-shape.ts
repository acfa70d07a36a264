import * as z from 'zod/mini'
import { orAbsent } from '@/core/findings/reason.ts'

/** A level by its id; what it is called stands once, in the document's `levels`. */
export const levelIdShape = z.string()

/** A mean of the model with its standard error and plain 95 % t-interval. */
export const meanShape = z.strictObject({
  level: levelIdShape,
  estimate: z.number(),
  se: z.number(),
  low: z.number(),
  high: z.number(),
})

/** Mean of b minus mean of a, a before b in their order, with the simultaneous 95 % interval (Tukey-Kramer). */
export const pairShape = z.strictObject({
  a: levelIdShape,
  b: levelIdShape,
  difference: z.number(),
  se: z.number(),
  low: z.number(),
  high: z.number(),
  p: z.number(),
})

/** A level's mean minus the control's, with Dunnett's simultaneous 95 % interval; approximate when the correlations had to be brought to the nearest product form. */
export const againstControlShape = z.strictObject({
  level: levelIdShape,
  difference: z.number(),
  se: z.number(),
  low: z.number(),
  high: z.number(),
  p: z.number(),
  method: z.enum(['exact', 'approximate']),
})

/** Change of the response for one unit of the factor. */
export const trendShape = z.strictObject({
  slope: z.number(),
  se: z.number(),
  low: z.number(),
  high: z.number(),
  p: z.number(),
})

const intervalShape = z.strictObject({ low: z.number(), high: z.number() })

/** Fieller's 95 % set: inside an interval; everything outside one (`low` and `high` are the ends of the gap, null where that arm is missing); or everything. */
export const fiellerShape = z.strictObject({
  kind: z.enum(['interval', 'outside', 'everything']),
  low: z.nullable(z.number()),
  high: z.nullable(z.number()),
})

/** The curve y = ... + linear L + quadratic L^2 in raw levels, with its highest or lowest point. */
export const curveShape = z.strictObject({
  linear: z.number(),
  quadratic: z.number(),
  vertex: orAbsent(z.number()),
  delta: orAbsent(intervalShape),
  fieller: orAbsent(fiellerShape),
})

/** F-test of what a model leaves over. */
const lackOfFitShape = z.strictObject({
  f: z.number(),
  df1: z.number(),
  df2: z.number(),
  p: z.number(),
})

/**
 * Where a response with a target meets it (`at`, none when the curve stays clear of it), and the stretches of levels at which
 * the fitted height cannot be told from the target (Fieller, 95 %); a stretch without an end has null there.
 */
const crossingShape = z.strictObject({
  target: z.number(),
  of: z.enum(['curve', 'line']),
  at: z.array(z.number()),
  stretches: z.array(z.strictObject({ low: z.nullable(z.number()), high: z.nullable(z.number()) })),
})

/**
 * Where the best level lies and what may be claimed of it: `inside` the levels tried; past the low or high end (or no more than better towards it, where the sets leave more);
 * `least-inside` (the curve has its worst point inside, so the best is at an end); or `flat` (neither line nor curve shows).
 */
export const bestShape = z.strictObject({
  answer: z.enum(['inside', 'past-low', 'past-high', 'least-inside', 'flat']),
  ...curveShape.shape,
  lackOfFit: orAbsent(lackOfFitShape),
  asHandled: orAbsent(curveShape),
  crossing: z.exactOptional(orAbsent(crossingShape)),
})

/** One rung of the evidence: F of the level after blocks, marginal means and everything compared at that rung's own error. */
export const rungShape = z.strictObject({
  f: z.number(),
  df1: z.number(),
  df2: z.number(),
  p: z.number(),
  residualSd: z.number(),
  means: z.array(meanShape),
  pairs: z.array(pairShape),
  againstControl: orAbsent(z.array(againstControlShape)),
  trend: orAbsent(trendShape),
  best: orAbsent(bestShape),
  /** Levels that scatter unequally, where that shows (p below 0.1): of these pieces each pair then has its own error, above it one error for all. */
  unequalSpread: z.exactOptional(
    z.strictObject({
      p: z.number(),
      widest: levelIdShape,
      calmest: levelIdShape,
      pairs: z.enum(['own-error', 'one-error']),
    }),
  ),
})

/**
 * Freshness or order beside the level: the covariate's slope, the level's F and means at its mean, and how much the
 * level differences widen for it; beyond 3 the two cannot be told apart (`separable` false).
 */
export const besideShape = z.strictObject({
  slope: z.number(),
  f: z.number(),
  df1: z.number(),
  df2: z.number(),
  p: z.number(),
  widening: z.number(),
  separable: z.boolean(),
  means: z.array(meanShape),
})

/** The flat rung over all rows, for comparison with other programs: it overstates and never headlines. */
export const rowsRungShape = z.strictObject({
  ...rungShape.shape,
  freshness: orAbsent(besideShape),
  order: orAbsent(besideShape),
})

export type LevelId = z.infer<typeof levelIdShape>
export type Mean = z.infer<typeof meanShape>
export type Pair = z.infer<typeof pairShape>
export type AgainstControl = z.infer<typeof againstControlShape>
export type Trend = z.infer<typeof trendShape>
export type FiellerSet = z.infer<typeof fiellerShape>
export type Curve = z.infer<typeof curveShape>
export type Crossing = z.infer<typeof crossingShape>
export type Best = z.infer<typeof bestShape>
export type Rung = z.infer<typeof rungShape>
export type Beside = z.infer<typeof besideShape>
