import { addPhoto } from './add-photo.ts'
import { beginSession } from './begin-session.ts'
import { createTrial } from './create-trial.ts'
import { keepAnswer } from './keep-answer.ts'
import { eraseTaster, keepKitchenThing, removeKitchenThing } from './keep-kitchen.ts'
import { keepPlan } from './keep-plan.ts'
import { logEvents } from './log-events.ts'
import { makeAgain } from './make-again.ts'
import type { Notebook } from './notebook.ts'
import { eraseTrial, putAway } from './put-away.ts'
import { sealBallot } from './seal-ballot.ts'
import type { NotebookServices } from './services.ts'
import type { Store } from './store.ts'
import { turnOver } from './turn-over.ts'

export type Writing = Pick<
  Notebook,
  | 'createTrial'
  | 'keepPlan'
  | 'beginSession'
  | 'makeAgain'
  | 'turnOver'
  | 'logAll'
  | 'sealBallot'
  | 'keepAnswer'
  | 'archive'
  | 'bin'
  | 'erase'
  | 'keepKitchenThing'
  | 'removeKitchenThing'
  | 'eraseTaster'
  | 'addPhoto'
>

/**
 * All that writes the records of trials and kitchen, with its checks, in one piece: the home list is shown before it is
 * there, and it is fetched as soon as a notebook is made, so that no press waits for it.
 */
export function writingOf(store: Store, services: NotebookServices): Writing {
  const { now } = services
  return {
    createTrial: (plan, options) => createTrial(store, services, plan, options),
    keepPlan: (plan, base) => keepPlan(store, services, plan, base),
    beginSession: (session) => beginSession(store, session),
    makeAgain: (dough) => makeAgain(store, services, dough),
    turnOver: (found) => turnOver(store, services, found),
    logAll: (events, seen) => logEvents(store, services, events, seen),
    sealBallot: (ballot) => sealBallot(store, services, ballot),
    keepAnswer: (id, revision, answer) => keepAnswer(store, id, revision, answer),
    archive: (id, away) => putAway(store, id, 'archivedAt', away ? now() : undefined),
    bin: (id, away) => putAway(store, id, 'binnedAt', away ? now() : undefined),
    erase: (trialId) => eraseTrial(store, trialId),
    keepKitchenThing: (thing) => keepKitchenThing(store, thing),
    removeKitchenThing: (id) => removeKitchenThing(store, id),
    eraseTaster: (tasterId) => eraseTaster(store, tasterId, now()),
    addPhoto: (photo, picture, entry) => addPhoto(store, services, photo, picture, entry),
  }
}
