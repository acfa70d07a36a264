import { createContext, type ReactNode, use, useDeferredValue, useMemo } from 'react'
import { judgedParts } from '@/app/plan/page/read-parts.ts'
import { usePlanParts } from '@/app/plan/page/use-plan-parts.ts'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import type { DayFound, NextFound } from '@/app/worker/clock-worker.ts'
import { useAnswer } from '@/app/worker/use-answer.ts'
import type { DayCost } from '@/core/clock-plan/day-cost.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/** The next session's day: nothing yet, refused, or found, the quick first plan at once and the searched one after it. */
export type FoundDay =
  | { state: 'working' | 'undealt' | 'failed' }
  | {
      state: 'found'
      plan: Plan
      session: Session
      cost: DayCost | null
      day: DayFound
      searching: boolean
    }

/** Found once for all of the page that speaks of the day. */
const FoundDayContext = createContext<FoundDay>({ state: 'working' })

/** The day of the next session by the clock, as it is found for this page. */
export function useDayFound(): FoundDay {
  return use(FoundDayContext)
}

/** Deals the next session and lays its day, anew with every change of the plan that matters to it, off the screen. */
function useFindDay(): FoundDay {
  const { trial, sessions } = useWholeTrial()
  const plan = useDeferredValue(usePlanParts(judgedParts))
  const asked = useMemo(() => ({ plan, seed: trial.seed, sessions }), [plan, trial.seed, sessions])
  const first = useAnswer('clock', asked, (service, question: typeof asked) =>
    service.next(question),
  )
  const next = first.state === 'answered' ? first.answer : null
  const best = useAnswer('clock', next, (service, { plan, session }: NextFound) =>
    service.best({ plan, session }),
  )
  return useMemo(() => {
    if (first.state !== 'answered') return { state: first.state }
    if (!next) return { state: 'undealt' }
    const searched = best.state === 'answered' && !best.newer && !first.newer ? best.answer : null
    const searching = searched === null && best.state !== 'failed'
    return { state: 'found', ...next, day: searched ?? next.day, searching }
  }, [first, next, best])
}

/** Finds the next session's day for whatever of the page inside speaks of it. */
export function FoundDayOf({ children }: { children: ReactNode }) {
  return <FoundDayContext value={useFindDay()}>{children}</FoundDayContext>
}
