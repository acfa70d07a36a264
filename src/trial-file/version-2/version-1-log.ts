import * as z from 'zod/mini'
import {
  atShape,
  celsiusShape,
  countShape,
  gramsShape,
  idShape,
  noteShape,
  wholeShape,
  zoneShape,
} from './version-1-quantities.ts'

/* Frozen: see version-1-quantities.ts. */
const letterShape = z.string().check(z.regex(/^[A-Z]{1,2}$/))

const servingCodeShape = z.string().check(z.regex(/^[1-9][0-9]{2}$/))

const batchShape = z.strictObject({
  id: idShape,
  letter: letterShape,
  levelId: z.nullable(idShape),
})

const pieceShape = z.strictObject({
  id: idShape,
  batchId: idShape,
  levelId: idShape,
  flightId: z.nullable(idShape),
  role: z.enum(['counted', 'warm-up', 'spare']),
})

const flightShape = z.strictObject({
  id: idShape,
  number: countShape,
  pieceIds: z.array(idShape),
})

const loadShape = z.strictObject({
  id: idShape,
  number: countShape,
  pieceIds: z.array(idShape),
})

const servingShape = z.strictObject({
  id: idShape,
  code: servingCodeShape,
  pieceId: idShape,
  flightId: z.nullable(idShape),
})

const tasterOrderShape = z.strictObject({
  tasterId: idShape,
  servingIds: z.array(idShape),
})

const tellApartSetShape = z.strictObject({
  id: idShape,
  tasterId: idShape,
  samples: z.array(z.strictObject({ code: servingCodeShape, levelId: idShape })),
  answerCode: servingCodeShape,
})

const dealtShape = z.strictObject({
  seed: z.number().check(z.int(), z.gte(0), z.lte(0xffffffff)),
  drawVersion: countShape,
  letters: z.array(z.strictObject({ levelId: idShape, letter: letterShape })),
  doughOrder: z.array(idShape),
  reversed: z.boolean(),
  flights: z.array(flightShape),
  loads: z.array(loadShape),
  servings: z.array(servingShape),
  tasterOrders: z.array(tasterOrderShape),
  sets: z.array(tellApartSetShape),
})

export const sessionShape = z.strictObject({
  id: idShape,
  trialId: idShape,
  planId: idShape,
  number: countShape,
  createdAt: atShape,
  zone: zoneShape,
  plannedSessions: wholeShape,
  batches: z.array(batchShape),
  pieces: z.array(pieceShape),
  dealt: dealtShape,
})

const aboutShape = z.strictObject({
  kind: z.enum(['trial', 'session', 'batch', 'piece', 'serving', 'step', 'taster', 'set']),
  id: idShape,
})

const stamped = {
  id: idShape,
  trialId: idShape,
  sessionId: z.nullable(idShape),
  device: idShape,
  count: wholeShape,
  at: atShape,
  zone: zoneShape,
  about: aboutShape,
  corrects: z.exactOptional(idShape),
}

const event = <Kind extends string, Fields extends z.core.$ZodLooseShape>(
  kind: Kind,
  fields: Fields,
) => z.strictObject({ ...stamped, kind: z.literal(kind), ...fields })

const cause = { reason: noteShape }

export const eventShape = z.discriminatedUnion('kind', [
  event('void', {}),
  event('lock', {}),
  event('weighed', {
    ingredientId: idShape,
    prefermentId: z.exactOptional(idShape),
    grams: gramsShape,
  }),
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
    ]),
    celsius: celsiusShape,
  }),
  event('step-started', { stepId: idShape, repeat: countShape }),
  event('step-stopped', { stepId: idShape, repeat: countShape }),
  event('rise', { percent: z.number().check(z.gte(-100), z.lte(2000)) }),
  event('measured', { responseId: idShape, value: z.number() }),
  event('bake-in', {}),
  event('bake-out', {}),
  event('mass', {
    when: z.enum(['in', 'out', 'cooled']),
    grams: gramsShape,
    topped: z.exactOptional(z.boolean()),
  }),
  event('size', {
    what: z.enum(['height-in', 'height-out', 'volume']),
    value: z.number().check(z.gte(0), z.lte(1e6)),
  }),
  event('failure', {
    what: z.enum(['stuck', 'torn', 'burnt', 'rescued', 'not-served', 'other']),
    note: z.exactOptional(noteShape),
  }),
  event('note', { text: noteShape }),
  event('photo', { photoId: idShape, caption: z.exactOptional(noteShape) }),
  event('served', {}),
  event('present', {}),
  event('declined', {}),
  event('left', {}),
  event('tasting-closed', cause),
  event('unsealed', {}),
  event('peeked', { reason: z.exactOptional(noteShape) }),
  event('findings-looked', {}),
])

export const photoShape = z.strictObject({
  id: idShape,
  trialId: idShape,
  at: atShape,
  mediaType: z.enum(['image/jpeg', 'image/png', 'image/webp']),
  widthPixels: z.number().check(z.int(), z.gt(0)),
  heightPixels: z.number().check(z.int(), z.gt(0)),
})

const answerShape = z.strictObject({
  responseId: idShape,
  value: z.nullable(z.number()),
  why: z.exactOptional(noteShape),
})

export const ballotShape = z.strictObject({
  id: idShape,
  trialId: idShape,
  sessionId: idShape,
  tasterId: idShape,
  device: idShape,
  count: wholeShape,
  at: atShape,
  startedAt: atShape,
  about: z.strictObject({ kind: z.enum(['serving', 'set']), id: idShape }),
  answers: z.array(answerShape),
  pickedCode: z.exactOptional(z.string().check(z.regex(/^[1-9][0-9]{2}$/))),
  replaces: z.exactOptional(idShape),
})
