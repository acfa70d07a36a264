import * as z from 'zod/mini'
import { countTo } from '@/core/record/count.ts'
import { idShape } from '@/core/record/id-and-stamp.ts'
import { most } from '@/core/record/most.ts'
import { celsiusShape, secondsShape } from '@/core/record/quantity.ts'
import { nameShape, noteShape } from '@/core/record/text.ts'

export const stepKinds = [
  'feed',
  'autolyse',
  'mix',
  'rest',
  'fold',
  'divide',
  'ball',
  'proof',
  'cold-proof',
  'warm-up',
  'open',
  'top',
  'slash',
  'bake',
  'cool',
  'cut',
  'serve',
] as const

/** What ends a step: the clock, a mark the baker sees or feels, or a reading. */
const endsByShape = z.discriminatedUnion('by', [
  z.strictObject({ by: z.literal('clock') }),
  z.strictObject({
    by: z.literal('mark'),
    mark: z.enum(['rise', 'poke', 'windowpane', 'bake-loss', 'colour', 'own']),
    risePercent: z.exactOptional(z.number().check(z.gt(0), z.lte(1000))),
    /** Of a bake loss: how much of its weight at the oven a piece has lost. */
    lossPercent: z.exactOptional(z.number().check(z.gt(0), z.lt(100))),
    text: z.exactOptional(noteShape),
  }),
  z.strictObject({
    by: z.literal('reading'),
    of: z.enum(['dough', 'oven-floor', 'core']),
    celsius: celsiusShape,
  }),
])

/**
 * A stage of the method. Each of its `repeats` takes `handsSeconds` of work, then waits `waitSeconds` (for a step that ends
 * by a mark or reading: the expected wait). The wait may end `earlySeconds` sooner, never for a mark or reading, since nobody
 * can end a rise before it is there, and `lateSeconds` later: for a mark, how long the ripe dough may stand.
 */
export const stepShape = z.strictObject({
  id: idShape,
  kind: z.enum(stepKinds),
  name: nameShape,
  per: z.enum(['batch', 'piece']),
  /** Done once for all doughs together, such as feeding one starter: asked for once, and logged of each of them. */
  once: z.exactOptional(z.literal(true)),
  repeats: countTo(most.repeats),
  handsSeconds: secondsShape,
  waitSeconds: secondsShape,
  earlySeconds: secondsShape,
  lateSeconds: secondsShape,
  endsBy: endsByShape,
  uses: z.array(z.enum(['hands', 'mixer', 'oven'])).check(z.maxLength(3)),
  celsius: z.exactOptional(celsiusShape),
  /** It shapes the dough, so one person should do it for all doughs. */
  samePerson: z.exactOptional(z.literal(true)),
  /** Of a bake: hands for taking one piece out, and how long the oven then needs until it is as hot again. */
  pullSeconds: z.exactOptional(secondsShape),
  recoverySeconds: z.exactOptional(secondsShape),
})

export type StepKind = (typeof stepKinds)[number]
export type EndsBy = z.infer<typeof endsByShape>
export type Step = z.infer<typeof stepShape>
