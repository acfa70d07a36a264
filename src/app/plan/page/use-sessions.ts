import { useRef } from 'react'
import type { Session } from '@/core/session/session-record.ts'
import { useWhole } from './whole-context.ts'

/** The trial's sessions, the same list for as long as they say the same: the notebook reads all anew at every keeping. */
export function useSessions(): readonly Session[] {
  const { sessions } = useWhole()
  const last = useRef(sessions)
  if (JSON.stringify(last.current) !== JSON.stringify(sessions)) last.current = sessions
  return last.current
}
