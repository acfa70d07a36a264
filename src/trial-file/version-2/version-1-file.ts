import * as z from 'zod/mini'
import { kitchenThingShape } from './version-1-kitchen.ts'
import { ballotShape, eventShape, photoShape, sessionShape } from './version-1-log.ts'
import { planShape, trialShape } from './version-1-plan.ts'
import { noteShape } from './version-1-quantities.ts'

/** A whole trial file as version 1 wrote it. Frozen: never edited again, whatever becomes of the records. */
export const version1File = z.strictObject({
  format: z.literal('evenhand-trial'),
  version: z.literal(1),
  note: z.exactOptional(noteShape),
  trial: trialShape,
  plans: z.array(planShape),
  sessions: z.array(sessionShape),
  events: z.array(eventShape),
  ballots: z.array(ballotShape),
  photos: z.array(photoShape),
  kitchen: z.array(kitchenThingShape),
})
