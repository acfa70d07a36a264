import * as z from 'zod/mini'
import { countShape, countTo, listOf, wholeShape } from '@/core/record/count.ts'
import { atShape, idShape, zoneShape } from '@/core/record/id-and-stamp.ts'
import { most } from '@/core/record/most.ts'
import { answeredShape, celsiusShape, gramsShape } from '@/core/record/quantity.ts'
import { noteShape } from '@/core/record/text.ts'
import { servingCodeShape } from './serving-code.ts'

const aboutShape = z.strictObject({
  kind: z.enum(['trial', 'session', 'batch', 'piece', 'serving', 'step', 'taster', 'set']),
  id: idShape,
})

const stamped = {
  id: idShape,
  trialId: idShape,
  sessionId: z.nullable(idShape),
  /** The device that wrote it and its running number there: on one device `count` is the order, never the clock. */
  device: idShape,
  count: wholeShape,
  at: atShape,
  zone: zoneShape,
  about: aboutShape,
  /**
   * Of an entry that came over an open table from a device whose clock stands otherwise: how many milliseconds the baker's clock
   * stands later, below zero earlier. `at` is told by the baker's clock then.
   */
  clockLater: z.exactOptional(z.number().check(z.int())),
  /** The event this one replaces; a `void` event takes that one back without a replacement. */
  corrects: z.exactOptional(idShape),
}

const event = <Kind extends string, Fields extends z.core.$ZodLooseShape>(
  kind: Kind,
  fields: Fields,
) => z.strictObject({ ...stamped, kind: z.literal(kind), ...fields })

/** What lay under the plates, in the order they were tasted, and which level each dough turned out to be. */
const turnedShape = z.strictObject({
  plates: z.exactOptional(
    listOf(z.strictObject({ servingId: idShape, pieceId: idShape }), {
      most: most.piecesOfSession,
    }),
  ),
  samples: z.exactOptional(
    listOf(z.strictObject({ setId: idShape, code: servingCodeShape, levelId: idShape }), {
      most: most.piecesOfSession,
    }),
  ),
  doughs: z.exactOptional(
    listOf(z.strictObject({ batchId: idShape, levelId: idShape }), { most: most.batches }),
  ),
})
export type Turned = z.infer<typeof turnedShape>

const cause = { reason: noteShape }

/** Which bake of the method is begun or ended, the first where none is named; `pieceIds`: what a dough baked whole takes along. */
const oven = {
  stepId: z.exactOptional(idShape),
  repeat: z.exactOptional(countShape),
  pieceIds: z.exactOptional(z.array(idShape)),
}

/** One line of the append-only log. Nothing in it is ever changed; a correction cites what it corrects. */
export const eventShape = z.discriminatedUnion('kind', [
  /** Takes back the event it cites: undo. */
  event('void', {}),
  /** The expectation and main response are locked: at the first mix. */
  event('lock', {}),
  /** A weight read from the scale, for an ingredient of a batch (`prefermentId` when it went into a preferment). */
  event('weighed', {
    ingredientId: idShape,
    prefermentId: z.exactOptional(idShape),
    grams: gramsShape,
  }),
  /** Worked in while handling: flour from the bench, water from wet hands, oil from the tub. */
  event('worked-in', { what: z.enum(['dusting-flour', 'hand-water', 'oil']), grams: gramsShape }),
  event('temperature', {
    of: z.enum([
      'dough',
      'piece',
      'flour',
      'water',
      'room',
      'preferment',
      'oven-floor',
      'core',
      'fridge',
      'serving',
    ]),
    celsius: celsiusShape,
  }),
  event('step-started', { stepId: idShape, repeat: countShape }),
  /** The work of a step is done and its wait begins. */
  event('hands-off', { stepId: idShape, repeat: countShape }),
  event('step-stopped', { stepId: idShape, repeat: countShape }),
  /** A step that is not done: nothing begins by it. */
  event('step-skipped', { stepId: idShape, repeat: countShape }),
  /** One more repeat than planned is to be done to this dough or piece. */
  event('step-added', { stepId: idShape, repeat: countShape }),
  /** The wait of one repeat is to be so much longer than planned, below zero shorter. */
  event('wait-changed', {
    stepId: idShape,
    repeat: countShape,
    moreSeconds: z.number().check(z.int(), z.gte(-604_800), z.lte(604_800)),
  }),
  /** How many folds one repeat of a folding step was. */
  event('folded', { stepId: idShape, repeat: countShape, folds: countTo(most.repeats) }),
  event('rise', { percent: z.number().check(z.gte(-100), z.lte(2000)) }),
  /** A baker's answer to a response: a handling score or a measurement of their own. */
  event('measured', { responseId: idShape, value: answeredShape }),
  /** A bake is one fact: into the oven begins it, out of the oven ends it, and no entry of a step stands beside them. */
  event('bake-in', oven),
  event('bake-out', oven),
  /** The first colour is seen on a piece in the oven. */
  event('browned', {}),
  /** Mass of a piece: into the oven, out of it, or cooled at a stated age. */
  event('mass', {
    when: z.enum(['in', 'out', 'cooled']),
    grams: gramsShape,
    topped: z.exactOptional(z.boolean()),
  }),
  /** Size of a piece: height into and out of the oven in mm, volume in mL. */
  event('size', {
    what: z.enum(['height-in', 'height-out', 'volume']),
    value: z.number().check(z.gte(0), z.lte(1e6)),
  }),
  event('failure', {
    what: z.enum(['stuck', 'torn', 'burnt', 'gummy', 'rescued', 'not-served', 'other']),
    note: z.exactOptional(noteShape),
  }),
  /** A dough that failed is made again: the new dough's id. */
  event('made-again', { batchId: idShape }),
  /** The baker was told what is still missing of the day, and leaves it so. */
  event('day-closed', {}),
  event('note', { text: noteShape }),
  /** `widthMillimetres`: how much of the dough or piece the picture shows from its left edge to its right one, where it is known. */
  event('photo', {
    photoId: idShape,
    caption: z.exactOptional(noteShape),
    widthMillimetres: z.exactOptional(z.number().check(z.gt(0), z.lte(10_000))),
  }),
  /** A serving is put before the tasters. */
  event('served', {}),
  event('present', {}),
  event('declined', {}),
  event('left', {}),
  /** The taster was told the allergens and cautions and says so. */
  event('allergens-heard', {}),
  /** A ballot was left by a deliberate press, unfinished or not: the seat is free for another. */
  event('seat-left', {}),
  /** The baker closes the tasting before every ballot is in. */
  event('tasting-closed', cause),
  /**
   * The codes are given away; where plates or cups were shuffled, with what lay under them, or with why nobody can tell any more
   * (`lost`): then no level of the session is known for good.
   */
  event('unsealed', { turned: z.exactOptional(turnedShape), lost: z.exactOptional(noteShape) }),
  /** The plates of a round stand shuffled: whoever plated them lost track. */
  event('plates-shuffled', { round: countShape }),
  /** Whoever scored by plate turns them over: no score is changed from here on. */
  event('plates-turned', {}),
  /** Somebody looked at what a code stands for before unsealing. */
  event('peeked', { reason: z.exactOptional(noteShape) }),
  /** The device was taken from the table while codes were kept, everything still covered. */
  event('device-taken', {}),
  /** The findings were opened; before the last planned session that is recorded and reported. */
  event('findings-looked', {}),
])

export type About = z.infer<typeof aboutShape>
export type Event = z.infer<typeof eventShape>
export type EventKind = Event['kind']
export type EventOf<Kind extends EventKind> = Extract<Event, { kind: Kind }>
