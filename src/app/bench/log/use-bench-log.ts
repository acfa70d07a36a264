import { useEffect, useRef, useState } from 'react'
import { useServices } from '@/app/services/services.ts'
import type { Event } from '@/core/session/event-record.ts'
import { needsLock } from '@/core/session/locked.ts'
import type { BenchEntry } from '@/core/session/press/new-event.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/**
 * Logs entries of one session, all or none, and with the first mix of the trial the lock of expectation and main response.
 * What the notebook refuses is thrown to the nearest error boundary, so that no lost entry stays unseen. It is done once the
 * screen shows what was logged: until then the press that logged it is busy, and no second one finds it as it was.
 */
export function useBenchLog(whole: WholeTrial, session: Session) {
  const { notebook } = useServices()
  const [failure, setFailure] = useState<{ cause: unknown } | null>(null)
  const shown = useShown(whole.events)
  if (failure) throw failure.cause
  return async (...entries: BenchEntry[]) => {
    const ids = { trialId: whole.trial.id, sessionId: session.id }
    const locks = entries.some((entry) => needsLock(whole.events, whole.plans, entry))
    const lock = { ...ids, kind: 'lock', about: { kind: 'trial', id: whole.trial.id } } as const
    const events = entries.map((entry) => ({ ...entry, ...ids }))
    try {
      const logged = await notebook.logAll(locks ? [lock, ...events] : events)
      await shown(logged)
    } catch (cause) {
      setFailure({ cause })
      throw cause
    }
  }
}

/** Waits until the log on the screen has what was just logged; one that has left the screen waits for nothing. */
function useShown(events: readonly Event[]): (logged: readonly Event[]) => Promise<void> {
  const waiting = useRef(new Map<string, () => void>())
  const onScreen = useRef(events)
  const settle = () => {
    for (const { id } of onScreen.current) waiting.current.get(id)?.()
  }
  useEffect(() => {
    onScreen.current = events
    if (waiting.current.size > 0) settle()
  })
  useEffect(() => {
    const left = waiting.current
    return () => {
      for (const go of left.values()) go()
    }
  }, [])
  return async (logged) => {
    const last = logged.at(-1)
    if (!last) return
    await new Promise<void>((resolve) => {
      waiting.current.set(last.id, () => {
        waiting.current.delete(last.id)
        resolve()
      })
      settle()
    })
  }
}
