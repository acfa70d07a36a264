import * as z from 'zod/mini'
import { orAbsent } from '@/core/findings/reason.ts'
import { levelIdShape } from '@/core/findings/rungs/rung-shape.ts'
import {
  allowanceShape,
  asGoodShape,
  askedShape,
  besideShape,
  placeShape,
  shownShape,
  tooSmallShape,
} from './evidence-shape.ts'

/**
 * What the pieces (or, in one session of several flights, the doughs) themselves say, by F at 5 %: a hint, never of the factor. `chance` is how often pieces baked
 * like these are called different although the factor does nothing, and the share of the levels' spread that may be the bake.
 */
const nearShape = z.strictObject({
  rung: z.enum(['pieces', 'doughs']),
  differ: z.boolean(),
  p: z.number(),
  highest: levelIdShape,
  lowest: levelIdShape,
  difference: z.number(),
  chance: z.nullable(z.strictObject({ rate: z.number(), share: z.number() })),
})

/** Nothing is shown, but the first step's p is below 0.2: which way it leans. Chance alone leans as much in one of five such trials. */
const leanShape = z.discriminatedUnion('is', [
  z.strictObject({ is: z.literal('line'), goes: z.enum(['rises', 'falls']), p: z.number() }),
  z.strictObject({ is: z.literal('bend'), middle: z.enum(['high', 'low']), p: z.number() }),
  z.strictObject({
    is: z.literal('pairs'),
    higher: levelIdShape,
    lower: levelIdShape,
    p: z.number(),
  }),
])

/**
 * How the trial ends for the baker. *Adopt* a level: named first or easiest among those as good, all within the margin, or the best of
 * what is shown where no margin was named. *Hold*: such a level is there, but something must be made again first. *Stay* with the usual:
 * nothing is shown. *Again*: something is shown, but no level is known to be good enough.
 */
const endingShape = z.strictObject({
  kind: z.enum(['adopt', 'hold', 'stay', 'again']),
  level: z.nullable(levelIdShape),
  why: z.nullable(z.enum(['named', 'as-good', 'all-within', 'best-shown'])),
})

/** What is lacking to know more: sessions in all, a wider margin, or tasters. */
const lacksShape = z.discriminatedUnion('what', [
  z.strictObject({ what: z.enum(['sessions', 'repeats']), enough: z.number() }),
  z.strictObject({ what: z.literal('margin'), least: z.number() }),
  z.strictObject({ what: z.literal('a-second-session') }),
])

/** Freshness or order that takes the answer away: it follows the levels, or at equal minutes (places) nothing is left. */
const cautionShape = z.strictObject({
  what: z.enum(['freshness', 'order']),
  is: z.enum(['not-told-apart', 'takes-it']),
  apart: z.number(),
})

/**
 * Without whom or which session something else is shown, and without whom what is shown stays but it ends otherwise; `looked` false where
 * leaving one out was not tried.
 */
const hangsShape = z.strictObject({
  looked: z.boolean(),
  tasters: z.array(z.string()),
  sessions: z.array(z.number()),
  ending: z.strictObject({ tasters: z.array(z.string()), sessions: z.array(z.number()) }),
})

/**
 * The main response of one taster on the one evening of a trial: the levels from best to worst, equals together; whether they
 * tasted blind; how many sessions written first are still to come. An order of liking, nothing of the factor.
 */
const oneEveningShape = z.strictObject({
  order: z.array(z.array(levelIdShape)),
  blind: z.boolean(),
  left: z.number(),
})

/**
 * The conclusion of one response: what the rules of evidence allow to be said of it. Every sentence about it is written from this and
 * from nothing else, so that no two can exclude each other.
 */
export const conclusionShape = z.strictObject({
  /** The highest rung that answers; null when none does. */
  rung: z.nullable(z.enum(['pieces', 'doughs', 'factor'])),
  /** The main response carries the verdict; others are also seen. */
  main: z.boolean(),
  asked: askedShape,
  /** The sessions it rests on, whether tasters stand behind it, which way is better, and the usual among its levels. */
  sessions: z.number(),
  /** Where levels were made again in no block: how often at least, doughs or loaves of one level; null where sessions are the blocks. */
  repeats: z.nullable(z.number()),
  byTasters: z.boolean(),
  better: z.enum(['higher', 'lower', 'target', 'neither']),
  usual: z.nullable(levelIdShape),
  allowance: z.nullable(allowanceShape),
  near: z.nullable(nearShape),
  oneEvening: z.nullable(oneEveningShape),
  /** Of the factor, the expected first; empty when nothing is shown, or one session cannot show it. */
  shown: z.array(shownShape),
  lean: z.nullable(leanShape),
  /** The least that would have shown with power 0.8: a rise from first to last, a hump over its ends, or a pair. */
  wouldShow: z.nullable(z.strictObject({ of: z.enum(['rise', 'hump', 'pair']), size: z.number() })),
  tooSmall: orAbsent(tooSmallShape),
  asGood: orAbsent(asGoodShape),
  place: orAbsent(placeShape),
  freshness: orAbsent(besideShape),
  order: orAbsent(besideShape),
  caution: z.nullable(cautionShape),
  hangs: hangsShape,
  expectation: z.enum([
    'none',
    'held',
    'opposite',
    'inside-instead',
    'line-instead',
    'differs-instead',
    'too-small',
    'not-settled',
  ]),
  ending: endingShape,
  next: z.array(z.enum(['adopt', 'confirm', 'narrow', 'repeat'])),
  lacks: z.nullable(lacksShape),
})

export type Conclusion = z.infer<typeof conclusionShape>
export type OneEvening = z.infer<typeof oneEveningShape>
export type Near = z.infer<typeof nearShape>
export type Lean = z.infer<typeof leanShape>
export type Ending = z.infer<typeof endingShape>
export type Lacks = z.infer<typeof lacksShape>
export type Caution = z.infer<typeof cautionShape>
