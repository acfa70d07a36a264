import * as z from 'zod/mini'
import { conclusionShape } from '@/core/findings/evidence/conclusion-shape.ts'
import { levelIdShape, rowsRungShape, rungShape } from '@/core/findings/rungs/rung-shape.ts'
import { orAbsent } from './reason.ts'

/** What happened at one level over all its rows: descriptive only. Variance n - 1, interval by Student's t, 95 %. */
const levelSummaryShape = z.strictObject({
  level: levelIdShape,
  n: z.number(),
  mean: orAbsent(z.number()),
  sd: orAbsent(z.number()),
  low: orAbsent(z.number()),
  high: orAbsent(z.number()),
  median: orAbsent(z.number()),
})

/** Page's L for rising levels; the expected direction decides the side of p. */
const pageShape = z.strictObject({
  l: z.number(),
  p: z.number(),
  method: z.enum(['exact', 'exact-given-ties', 'normal', 'normal-given-ties']),
  direction: z.enum(['rising', 'falling', 'two-sided']),
})

/** Friedman's test with ties on taster by level means; tasters with an empty cell are left out and counted. */
const rankSumsFields = {
  chiSquare: z.number(),
  df: z.number(),
  p: z.number(),
  kendallW: z.number(),
  rankSums: z.array(z.strictObject({ level: levelIdShape, sum: z.number() })),
  leastDifference: orAbsent(z.number()),
  leftOut: z.number(),
}

export const rankSumsShape = z.strictObject(rankSumsFields)
const ranksShape = z.strictObject({ ...rankSumsFields, page: orAbsent(pageShape) })

/** Percentile interval of the best level over resampled tasters (eight or more) or sessions. */
const bootstrapShape = z.strictObject({
  low: z.number(),
  high: z.number(),
  resamples: z.number(),
  seed: z.number(),
  over: z.enum(['tasters', 'sessions']),
})

/** Shares of too little, right and too much, and how far the main score drops for each side, within taster and level. */
const justAboutRightShape = z.strictObject({
  responseId: z.string(),
  below: z.number(),
  right: z.number(),
  above: z.number(),
  drops: z.array(
    z.strictObject({
      side: z.enum(['below', 'above']),
      n: z.number(),
      tasters: z.number(),
      drop: orAbsent(z.number()),
      low: orAbsent(z.number()),
      high: orAbsent(z.number()),
    }),
  ),
})

/** One taster: correlation of their level means with those of the rest, the level they like best, spread of their scores. */
const agreementShape = z.strictObject({
  taster: z.string(),
  correlation: orAbsent(z.number()),
  best: orAbsent(levelIdShape),
  sd: orAbsent(z.number()),
})

/** Everything found about one response. */
export const responseFindingsShape = z.strictObject({
  id: z.string(),
  name: z.string(),
  n: z.number(),
  failures: z.number(),
  levels: z.array(levelSummaryShape),
  rows: orAbsent(rowsRungShape),
  pieces: orAbsent(rungShape),
  doughs: orAbsent(rungShape),
  factor: orAbsent(rungShape),
  ranks: orAbsent(ranksShape),
  bootstrap: orAbsent(bootstrapShape),
  justAboutRight: z.array(justAboutRightShape),
  agreement: z.array(agreementShape),
  conclusion: conclusionShape,
})

export type LevelSummary = z.infer<typeof levelSummaryShape>
export type Page = z.infer<typeof pageShape>
export type Ranks = z.infer<typeof ranksShape>
export type Bootstrap = z.infer<typeof bootstrapShape>
export type JustAboutRight = z.infer<typeof justAboutRightShape>
export type Agreement = z.infer<typeof agreementShape>
export type ResponseFindings = z.infer<typeof responseFindingsShape>
