import { useEffect, useRef, useState } from 'react'
import { useServices } from '@/app/services/services.ts'
import type { Event } from '@/core/session/event-record.ts'
import type { MovedOn } from '@/core/session/press/moved-on.ts'
import type { BenchEntry } from '@/core/session/press/new-event.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { MovedOnFailure } from '@/notebook/moved-on-failure.ts'

/**
 * Logs entries of one session, all or none; with the first mix of the trial the notebook writes the lock beside them.
 * A press that the log has moved on from is not taken, and `refused` says what stands against it until the next press; whatever
 * else the notebook refuses is thrown to the nearest error boundary, so that no lost entry stays unseen. It is done once the
 * screen shows what was logged: until then the press that logged it is busy, and no second one finds it as it was.
 */
export function useBenchLog(
  whole: WholeTrial,
  session: Session,
): { log: (...entries: BenchEntry[]) => Promise<boolean>; refused: MovedOn | null } {
  const { notebook } = useServices()
  const [failure, setFailure] = useState<{ cause: unknown } | null>(null)
  const [refused, setRefused] = useState<MovedOn | null>(null)
  const shown = useShown(whole.events)
  if (failure) throw failure.cause
  const log = async (...entries: BenchEntry[]) => {
    setRefused(null)
    const ids = { trialId: whole.trial.id, sessionId: session.id }
    try {
      const events = entries.map((entry) => ({ ...entry, ...ids }))
      const seen = new Set(whole.events.map(({ id }) => id))
      await shown(await notebook.logAll(events, seen))
      return true
    } catch (cause) {
      if (cause instanceof MovedOnFailure) {
        setRefused(cause.movedOn)
        return false
      }
      setFailure({ cause })
      throw cause
    }
  }
  return { log, refused }
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
