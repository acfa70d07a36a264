import { type Session, sessionShape } from '@/core/session/session-record.ts'
import { changeTrial } from './change-trial.ts'
import { checked } from './checked.ts'
import { NotebookFailure } from './notebook-failure.ts'
import type { Store } from './store.ts'

/** Keeps a dealt session for good. It must run the plan in force and take the next number. */
export async function beginSession(store: Store, session: Session): Promise<void> {
  const dealt = checked(sessionShape, session)
  await changeTrial(store, dealt.trialId, async (whole) => {
    if (dealt.planId !== whole.trial.planId)
      throw new NotebookFailure('refused-record', 'a session runs the plan in force')
    if (dealt.number !== whole.sessions.length + 1)
      throw new NotebookFailure('refused-record', 'sessions are numbered by one')
    if (await store.sessions.get(dealt.id))
      throw new NotebookFailure('refused-record', `session ${dealt.id} is already here`)
    await store.sessions.add(dealt)
    return { now: { sessions: [...whole.sessions, dealt] }, told: undefined }
  })
}
