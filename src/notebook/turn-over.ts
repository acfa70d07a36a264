import { eventsOfSession } from '@/core/session/effective-events.ts'
import { eventShape, type Turned } from '@/core/session/event-record.ts'
import { sessionShape } from '@/core/session/session-record.ts'
import { weightsOfBatch } from '@/core/session/weights-of-batch.ts'
import { tastingState } from '@/core/tasting/tasting-state.ts'
import { toTurn, turnsAll } from '@/core/tasting/to-turn.ts'
import { turnedSession } from '@/core/tasting/turned-session.ts'
import { changeTrial } from './change-trial.ts'
import { checked } from './checked.ts'
import { nextCounts } from './next-counts.ts'
import { NotebookFailure } from './notebook-failure.ts'
import type { NotebookServices } from './services.ts'
import type { Store } from './store.ts'

/** What was found under the plates and cups of a session, with what each cup held by its scale. */
export interface TurnedOver {
  trialId: string
  sessionId: string
  turned: Turned
  /** By dough: the ingredient of its cup, and grams as its scale showed them. */
  cups: readonly { batchId: string; ingredientId: string; grams: number }[]
}

/**
 * Unseals a session whose plates or cups were shuffled: what was found takes the place of the place-holders, and the unsealing
 * keeps it, in one transaction. What a cup held is logged beside the common share, where that was logged. Refused while
 * somebody is awaited, and where what was found is not all of it, each once.
 */
export async function turnOver(
  store: Store,
  { now, zone, newId }: NotebookServices,
  { trialId, sessionId, turned, cups }: TurnedOver,
): Promise<void> {
  await changeTrial(store, trialId, async (whole) => {
    const session = whole.sessions.find(({ id }) => id === sessionId)
    if (!session) throw new NotebookFailure('refused-record', `no session ${sessionId}`)
    const { mayUnseal } = tastingState(whole, sessionId)
    if (!mayUnseal.ok) throw new NotebookFailure('still-awaited', mayUnseal.reason)
    const wanted = toTurn(whole, sessionId)
    if (!wanted || !turnsAll(session, wanted, turned))
      throw new NotebookFailure('refused-record', 'not all that was shuffled is turned')
    const log = eventsOfSession(whole.events, sessionId)
    const poured = cups.filter(({ batchId, ingredientId }) =>
      weightsOfBatch(log, batchId).some((each) => each.ingredientId === ingredientId),
    )
    const { device, first } = await nextCounts(store, poured.length + 1)
    const stamped = (count: number) => ({
      ...{ id: newId(), trialId, sessionId, device, count: first + count, at: now(), zone },
    })
    const events = [
      ...poured.map(({ batchId, ingredientId, grams }, index) =>
        checked(eventShape, {
          ...{ kind: 'weighed', about: { kind: 'batch', id: batchId }, ingredientId, grams },
          ...stamped(index),
        }),
      ),
      checked(eventShape, {
        ...{ kind: 'unsealed', about: { kind: 'session', id: sessionId }, turned },
        ...stamped(poured.length),
      }),
    ]
    const changed = checked(sessionShape, turnedSession(session, turned))
    await store.sessions.put(changed)
    await store.events.bulkAdd(events)
    const sessions = whole.sessions.map((each) => (each.id === sessionId ? changed : each))
    return { now: { sessions, events: [...whole.events, ...events] }, told: undefined }
  })
}
