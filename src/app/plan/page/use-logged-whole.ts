import { useRef } from 'react'
import { sealed } from '@/core/whole-trial/sealed.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { useWhole } from './whole-context.ts'

/**
 * The trial with its log, the same record until something more is logged; null before anything is, and while a session is
 * sealed: what the log shows names levels.
 */
export function useLoggedWhole(): WholeTrial | null {
  const whole = useWhole()
  const { sessions, events, ballots } = whole
  const size = `${sessions.length} ${events.length} ${ballots.length}`
  const last = useRef<{ size: string; whole: WholeTrial | null }>({ size: '', whole: null })
  if (last.current.size !== size)
    last.current = { size, whole: sessions.length === 0 || sealed(whole) ? null : whole }
  return last.current.whole
}
