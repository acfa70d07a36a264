import * as z from 'zod/mini'
import { levelIdShape } from '@/core/findings/rungs/rung-shape.ts'
import { splitPoints } from '@/core/trial/factor.ts'
import { orAbsent } from './reason.ts'
import { rankSumsShape, responseFindingsShape } from './response-findings-shape.ts'

/** One tell-apart test of two levels: exact binomial over all answers; shares and d' by person. A d' without bound is `never-reached`. */
const discriminationShape = z.strictObject({
  test: z.enum(['triangle', 'duo-trio', 'paired']),
  between: z.tuple([levelIdShape, levelIdShape]),
  n: z.number(),
  correct: z.number(),
  /** How many people answered, and over how many sessions, each with two pieces of its own. */
  people: z.number(),
  sessions: z.number(),
  p: z.number(),
  /** Estimated share of people who tell them apart, with its 95 % interval. */
  discriminators: z.strictObject({ share: z.number(), low: z.number(), high: z.number() }),
  dPrime: z.strictObject({
    estimate: orAbsent(z.number()),
    low: orAbsent(z.number()),
    high: orAbsent(z.number()),
  }),
})

/**
 * One question by which tasters put the samples in order: mean place and how often first (also shared), then Friedman's test, a block
 * a taster. `leftOut` orders lacked a level, `knowing` are of tasters who knew which was which.
 */
const foundRankingShape = z.strictObject({
  /** In the baker's own words; null for the usual ones. */
  asks: z.nullable(z.string()),
  ties: z.boolean(),
  orders: z.number(),
  tasters: z.number(),
  sessions: z.number(),
  leftOut: z.number(),
  knowing: z.number(),
  levels: z.array(z.strictObject({ level: levelIdShape, place: z.number(), first: z.number() })),
  ranks: orAbsent(rankSumsShape),
})

/** Weighted desirability of each level (Derringer and Suich), every part shown. */
const tradeOffShape = z.strictObject({
  weights: z.array(z.strictObject({ responseId: z.string(), weight: z.number() })),
  levels: z.array(
    z.strictObject({
      level: levelIdShape,
      overall: orAbsent(z.number()),
      parts: z.array(
        z.strictObject({ responseId: z.string(), desirability: orAbsent(z.number()) }),
      ),
    }),
  ),
})

/** What the findings are about. `kind` is the trial's own kind of factor; for scores from elsewhere `measured` or `choice`. */
const factorFactsShape = z.strictObject({
  kind: z.string(),
  name: z.string(),
  unitOfMeasure: z.string(),
  ordered: z.boolean(),
  splitsAt: z.nullable(z.enum(splitPoints)),
})

/** A level that was compared; `name` is its value in the factor's unit, for a choice its label. Two may be called the same. */
const foundLevelShape = z.strictObject({
  id: levelIdShape,
  name: z.union([z.number(), z.string()]),
  control: z.boolean(),
})

/**
 * The machine-readable findings: responses in plan order, the main one first; an absent answer is `{ reason }` in its place.
 * Levels and responses are known by their ids throughout, and named in `levels` and in each response's `name`.
 */
export const findingsDocumentShape = z.strictObject({
  format: z.literal('evenhand-findings'),
  version: z.literal(3),
  factor: factorFactsShape,
  unit: z.enum(['batch', 'piece']),
  levels: z.array(foundLevelShape),
  responses: z.array(responseFindingsShape),
  discrimination: z.array(discriminationShape),
  /** Left out where nothing was ranked. */
  rankings: z.exactOptional(z.array(foundRankingShape)),
  tradeOff: orAbsent(tradeOffShape),
})

export type Discrimination = z.infer<typeof discriminationShape>
export type FoundRanking = z.infer<typeof foundRankingShape>
export type TradeOff = z.infer<typeof tradeOffShape>
export type FactorFacts = z.infer<typeof factorFactsShape>
export type FoundLevel = z.infer<typeof foundLevelShape>
export type FindingsDocument = z.infer<typeof findingsDocumentShape>
