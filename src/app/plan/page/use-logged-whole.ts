import { useRef } from 'react'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import { sealed } from '@/core/seal/sealed.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/**
 * The trial with its log, the same record until something more is logged, so that a key in the plan judges no log anew; null
 * before anything is, and while a session is sealed: what the log shows names levels.
 */
export function useLoggedWhole(): WholeTrial | null {
  const whole = useWholeTrial()
  const last = useRef<{ of: WholeTrial; logged: WholeTrial | null } | null>(null)
  const parts = ['sessions', 'events', 'ballots'] as const
  const same = last.current && parts.every((part) => last.current?.of[part] === whole[part])
  if (!last.current || !same)
    last.current = {
      of: whole,
      logged: whole.sessions.length === 0 || sealed(whole) ? null : whole,
    }
  return last.current.logged
}
