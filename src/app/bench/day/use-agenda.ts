import { useEffect, useMemo, useState } from 'react'
import type { PlannedDay } from '@/core/clock-plan/planned-day.ts'
import { type AgendaItem, agenda } from '@/core/session/agenda.ts'
import type { Standing } from '@/core/session/effective-events.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { lineUp } from './front-line.ts'

const everyMilliseconds = 5000

/**
 * What to do next for every dough and piece: reckoned anew with every entry, and every few seconds, since what stands in
 * front moves with the clock. While it lines up the same nothing is drawn again.
 */
export function useAgenda(
  session: Session,
  plan: Plan,
  events: readonly Standing[],
  day: PlannedDay,
  clock: () => number,
): readonly AgendaItem[] {
  const [moved, setMoved] = useState<{ of: readonly Standing[]; items: AgendaItem[] } | null>(null)
  const atEntry = useMemo(
    () => agenda(session, plan, events, clock(), day),
    [session, plan, events, clock, day],
  )
  const items = moved?.of === events ? moved.items : atEntry
  useEffect(() => {
    const look = () => {
      const now = agenda(session, plan, events, clock(), day)
      if (lineUp(now) !== lineUp(items)) setMoved({ of: events, items: now })
    }
    const timer = setInterval(look, everyMilliseconds)
    document.addEventListener('visibilitychange', look)
    return () => {
      clearInterval(timer)
      document.removeEventListener('visibilitychange', look)
    }
  }, [session, plan, events, clock, day, items])
  return items
}
