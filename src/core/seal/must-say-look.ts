import { effectiveEvents } from '@/core/session/effective-events.ts'
import { plannedSessionsOf } from './looks.ts'
import type { SealRecords } from './seal-records.ts'

/**
 * True when opening the findings now is a look before the last planned session that is not recorded yet: since the
 * newest unsealing (or ever, without one) nobody has looked.
 */
export function mustSayLook(whole: Pick<SealRecords, 'sessions' | 'events'>): boolean {
  const events = effectiveEvents(whole.events)
  const opened = new Set(
    events.flatMap(({ kind, sessionId }) => (kind === 'unsealed' && sessionId ? [sessionId] : [])),
  )
  if (opened.size >= plannedSessionsOf(whole.sessions)) return false
  const looked = events.findLastIndex(({ kind }) => kind === 'findings-looked')
  const unsealed = events.findLastIndex(({ kind }) => kind === 'unsealed')
  return looked === -1 || looked < unsealed
}
