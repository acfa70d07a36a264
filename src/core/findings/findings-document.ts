import * as z from 'zod/mini'
import { levelNameShape } from '@/core/findings/rungs/rung-shape.ts'
import { splitPoints } from '@/core/trial/factor.ts'
import { orAbsent } from './reason.ts'
import { responseFindingsShape } from './response-findings-shape.ts'

/** One tell-apart test of two levels: exact binomial, one answer per person and set counts as independent. A d' without bound is `never-reached`. */
const discriminationShape = z.strictObject({
  test: z.enum(['triangle', 'duo-trio', 'paired']),
  between: z.tuple([levelNameShape, levelNameShape]),
  n: z.number(),
  correct: z.number(),
  p: z.number(),
  /** Estimated share of people who tell them apart, with its 95 % interval. */
  discriminators: z.strictObject({ share: z.number(), low: z.number(), high: z.number() }),
  dPrime: z.strictObject({
    estimate: orAbsent(z.number()),
    low: orAbsent(z.number()),
    high: orAbsent(z.number()),
  }),
})

/** Weighted desirability of each level (Derringer and Suich), every part shown. */
const tradeOffShape = z.strictObject({
  weights: z.array(z.strictObject({ response: z.string(), weight: z.number() })),
  levels: z.array(
    z.strictObject({
      level: levelNameShape,
      overall: orAbsent(z.number()),
      parts: z.array(z.strictObject({ response: z.string(), desirability: orAbsent(z.number()) })),
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

/** The machine-readable findings: responses in plan order, the main one first; an absent answer is `{ reason }` in its place. */
export const findingsDocumentShape = z.strictObject({
  format: z.literal('evenhand-findings'),
  version: z.literal(2),
  factor: factorFactsShape,
  unit: z.enum(['batch', 'piece']),
  responses: z.array(responseFindingsShape),
  discrimination: z.array(discriminationShape),
  tradeOff: orAbsent(tradeOffShape),
})

export type Discrimination = z.infer<typeof discriminationShape>
export type TradeOff = z.infer<typeof tradeOffShape>
export type FactorFacts = z.infer<typeof factorFactsShape>
export type FindingsDocument = z.infer<typeof findingsDocumentShape>
