import { useEffect, useRef, useState } from 'react'
import type { NotLogged } from '@/app/bench/bench-context.ts'
import { useServices } from '@/app/services/services.ts'
import { failureReasonOf } from '@/core/record/failure-reason.ts'
import type { Event } from '@/core/session/event-record.ts'
import type { BenchEntry } from '@/core/session/press/new-event.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { MovedOnFailure } from '@/notebook/notebook-failure.ts'

/**
 * Logs entries of one session, all or none; with the first mix of the trial the notebook writes the lock beside them.
 * A press that the log has moved on from, or that the notebook could not keep, is not taken, and `notLogged` says why until
 * the next press; what was typed and the page around it stay. It is done once the
 * screen shows what was logged: until then the press that logged it is busy, and no second one finds it as it was.
 */
export function useBenchLog(
  whole: WholeTrial,
  session: Session,
): { log: (...entries: BenchEntry[]) => Promise<boolean>; notLogged: NotLogged | null } {
  const { notebook } = useServices()
  const [notLogged, setNotLogged] = useState<NotLogged | null>(null)
  const shown = useShown(whole.events)
  const log = async (...entries: BenchEntry[]) => {
    setNotLogged(null)
    const ids = { trialId: whole.trial.id, sessionId: session.id }
    try {
      const events = entries.map((entry) => ({ ...entry, ...ids }))
      const seen = new Set(whole.events.map(({ id }) => id))
      await shown(await notebook.logAll(events, seen))
      return true
    } catch (cause) {
      setNotLogged(whyNot(cause))
      return false
    }
  }
  return { log, notLogged }
}

function whyNot(cause: unknown): NotLogged {
  if (cause instanceof MovedOnFailure) return { why: 'moved-on', movedOn: cause.movedOn }
  const reason = failureReasonOf(cause)
  // What the notebook has no reason for is a fault of the program: it is told to whoever looks for faults, too.
  if (reason === null) console.error(cause)
  return { why: 'failed', reason, detail: cause instanceof Error ? cause.message : String(cause) }
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
