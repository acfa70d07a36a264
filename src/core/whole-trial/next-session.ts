import { plannedSessionsOf } from '@/core/seal/looks.ts'
import type { TastingRecords } from '@/core/tasting/tasting-records.ts'
import { sessionsDone } from './stage.ts'

/**
 * The number of the planned session that waits to be begun, from 1; null before the first one, while one is being made or
 * tasted, and when as many as planned were begun.
 */
export function nextSession(whole: TastingRecords): number | null {
  const begun = whole.sessions.length
  if (begun === 0 || sessionsDone(whole) < begun) return null
  return begun < plannedSessionsOf(whole.sessions) ? begun + 1 : null
}
