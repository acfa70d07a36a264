import * as z from 'zod/mini'
import { kitchenThingShape } from '@/core/kitchen/kitchen-record.ts'
import { listOf } from '@/core/record/count.ts'
import { most } from '@/core/record/most.ts'
import { eventShape } from '@/core/session/event-record.ts'
import { photoShape } from '@/core/session/photo-record.ts'
import { sessionShape } from '@/core/session/session-record.ts'
import { ballotShape } from '@/core/tasting/ballot-record.ts'
import { planShape } from '@/core/trial/plan-record.ts'
import { trialShape } from '@/core/trial/trial-record.ts'

/**
 * A trial with everything that belongs to it: what a trial file holds and what findings, fairness and report read.
 * `kitchen` copies the things its plans name, tasters among them.
 */
export const wholeTrialShape = z.strictObject({
  trial: trialShape,
  plans: listOf(planShape, { most: most.plans }),
  sessions: listOf(sessionShape, { most: most.sessions }),
  events: listOf(eventShape, { most: most.events }),
  ballots: listOf(ballotShape, { most: most.ballots }),
  photos: listOf(photoShape, { most: most.photos }),
  kitchen: listOf(kitchenThingShape, { most: most.kitchenThings }),
})
export type WholeTrial = z.infer<typeof wholeTrialShape>
