import { useMemo } from 'react'
import { useShownOfClock } from '@/app/kit/time/use-ticking.ts'
import { useServices } from '@/app/services/services.ts'
import type { AnewAsked, AnewFound } from '@/app/worker/clock-worker.ts'
import { type Asked, useAnswer } from '@/app/worker/use-answer.ts'
import type { PlannedDay } from '@/core/clock-plan/planned-day.ts'
import type { AgendaItem } from '@/core/session/agenda.ts'
import { goesAt } from '@/core/session/anew/goes-at.ts'
import { runsOff } from '@/core/session/anew/runs-off.ts'
import type { StepRun } from '@/core/session/step-runs.ts'

/** The rest of the day as it was made anew last. */
export interface AnewDay {
  /** What was asked last; null while the day goes as planned, and the log it was asked of. */
  question: AnewAsked | null
  answer: Asked<AnewFound>
  goesAt: (item: AgendaItem) => number | null
  /** When something that is to begin rings: once the hands come to it, if that is later than it was due. */
  beginsAt: (item: AgendaItem) => number | null
}

interface Today extends Omit<AnewAsked, 'now'> {
  day: PlannedDay
  items: readonly AgendaItem[]
  runs: readonly StepRun[]
  /** Some wait came out longer or shorter than it may be. */
  departed: boolean
}

/**
 * Makes the rest of the day anew off the screen while it stands off its plan: at every entry, and every minute. Until an answer
 * is there the last one tells; a day that goes as planned keeps the times of its log and plan.
 */
export function useDayAnew({ plan, session, events, day, items, runs, departed }: Today): AnewDay {
  const { now: clock } = useServices()
  const minute = useShownOfClock(clock, (now) => {
    const isOff = departed || isLate(items, now) || runsOff(items, day, runs, now)
    return isOff ? Math.floor(now / 60_000) : null
  })
  const question = useMemo(
    (): AnewAsked | null =>
      minute === null ? null : { plan, session, events, now: Math.max(clock(), minute * 60_000) },
    [plan, session, events, minute, clock],
  )
  const answer = useAnswer('clock', question, (service, asked: AnewAsked) => service.anew(asked))
  const found = question !== null && answer.state === 'answered' ? answer.answer : null
  return useMemo(() => {
    const tasks = found?.anew?.tasks ?? null
    const when = (item: AgendaItem) => goesAt(tasks, item)
    return {
      ...{ question, answer, goesAt: when },
      beginsAt: (item: AgendaItem) => {
        const at = when(item)
        const isLater = found !== null && at !== null && at > found.askedAt + 5000
        return isLater && item.dueAt !== null ? Math.max(at, item.dueAt) : item.dueAt
      },
    }
  }, [question, answer, found])
}

const isLate = (items: readonly AgendaItem[], now: number) =>
  items.some(({ latestAt }) => latestAt !== null && now > latestAt)
