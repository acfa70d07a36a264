import { useState } from 'react'
import { useServices } from '@/app/services/services.ts'
import { needsLock } from '@/core/session/locked.ts'
import type { BenchEntry } from '@/core/session/press/new-event.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/**
 * Logs entries of one session, all or none, and with the first mix of the trial the lock of expectation and main response.
 * What the notebook refuses is thrown to the nearest error boundary, so that no lost entry stays unseen.
 */
export function useBenchLog(whole: WholeTrial, session: Session) {
  const { notebook } = useServices()
  const [failure, setFailure] = useState<{ cause: unknown } | null>(null)
  if (failure) throw failure.cause
  return async (...entries: BenchEntry[]) => {
    const ids = { trialId: whole.trial.id, sessionId: session.id }
    const locks = entries.some((entry) => needsLock(whole.events, whole.plans, entry))
    const lock = { ...ids, kind: 'lock', about: { kind: 'trial', id: whole.trial.id } } as const
    const events = entries.map((entry) => ({ ...entry, ...ids }))
    try {
      await notebook.logAll(locks ? [lock, ...events] : events)
    } catch (cause) {
      setFailure({ cause })
      throw cause
    }
  }
}
