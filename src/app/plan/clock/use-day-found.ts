import { useMemo } from 'react'
import { usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import type { DayFound } from '@/app/worker/clock-worker.ts'
import { useAnswer } from '@/app/worker/use-answer.ts'
import { previewNextSession } from '@/core/session/preview-sessions.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/** The next session's day: nothing yet, refused, or found, the quick first plan at once and the searched one after it. */
export type FoundDay =
  | { state: 'working' | 'undealt' | 'failed' }
  | { state: 'found'; plan: Plan; session: Session; day: DayFound; searching: boolean }

/** The day of the next session by the clock, made anew with every change of the plan, off the screen. */
export function useDayFound(): FoundDay {
  const { trial, sessions } = useWholeTrial()
  const plan = usePlanPage((page) => page.plan)
  const asked = useMemo(() => {
    const next = previewNextSession(plan, trial.seed, sessions)
    return next.ok ? { plan, session: next.session } : null
  }, [plan, trial.seed, sessions])
  const first = useAnswer('clock', asked, (service, question: NonNullable<typeof asked>) =>
    service.first(question),
  )
  const best = useAnswer('clock', asked, (service, question: NonNullable<typeof asked>) =>
    service.best(question),
  )
  if (!asked) return { state: 'undealt' }
  const searched = best.state === 'answered' && !best.newer ? best.answer : null
  const day = searched ?? (first.state === 'answered' ? first.answer : null)
  if (first.state === 'failed' && best.state === 'failed') return { state: 'failed' }
  if (!day) return { state: 'working' }
  return { state: 'found', ...asked, day, searching: searched === null && best.state !== 'failed' }
}
