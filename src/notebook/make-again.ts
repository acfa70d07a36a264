import { sealOf } from '@/core/seal/sealed.ts'
import { doughAgain } from '@/core/session/dough-again.ts'
import { eventsOfSession } from '@/core/session/effective-events.ts'
import { eventShape } from '@/core/session/event-record.ts'
import { sessionShape } from '@/core/session/session-record.ts'
import { changeTrial } from './change-trial.ts'
import { checked } from './checked.ts'
import { nextCounts } from './next-counts.ts'
import { NotebookFailure } from './notebook-failure.ts'
import type { NotebookServices } from './services.ts'
import type { Store } from './store.ts'

/** Which dough is made again; `failed`: what the log is to say of the old one first, in words of the baker's own or none. */
export interface DoughToMakeAgain {
  trialId: string
  sessionId: string
  batchId: string
  failed?: { note?: string }
}

/**
 * Makes a failed dough again: the log says that it failed, the session gets a new dough of its level, and the log says so of
 * the old one, all in one transaction: a dough is never half made again.
 * Refused where a piece of the old dough was baked, where people have tasted, or where it was made again already. Gives the new
 * dough's id.
 */
export async function makeAgain(
  store: Store,
  { now, zone, newId }: NotebookServices,
  { trialId, sessionId, batchId, failed }: DoughToMakeAgain,
): Promise<string> {
  return await changeTrial(store, trialId, async (whole) => {
    const session = whole.sessions.find(({ id }) => id === sessionId)
    if (!session) throw new NotebookFailure('refused-record', `no session ${sessionId}`)
    const log = eventsOfSession(whole.events, sessionId)
    const tasted = sealOf(whole, sessionId) !== 'not-begun'
    const again = doughAgain(session, batchId, { log, tasted, newId })
    if (!again.ok) throw new NotebookFailure('refused-record', again.reason)
    const told = [
      ...(failed ? [{ kind: 'failure', what: 'not-served', ...failed }] : []),
      { kind: 'made-again', batchId: again.batchId },
    ]
    const { device, first } = await nextCounts(store, told.length)
    const changed = checked(sessionShape, again.session)
    const events = told.map((each, at) =>
      checked(eventShape, {
        ...{ ...each, about: { kind: 'batch', id: batchId }, id: newId(), trialId, sessionId },
        ...{ device, count: first + at, at: now(), zone },
      }),
    )
    await store.sessions.put(changed)
    await store.events.bulkAdd(events)
    const sessions = whole.sessions.map((each) => (each.id === sessionId ? changed : each))
    return { now: { sessions, events: [...whole.events, ...events] }, told: again.batchId }
  })
}
