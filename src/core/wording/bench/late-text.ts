import type { AgendaItem } from '@/core/session/agenda.ts'
import { lateBy } from '@/core/session/late-by.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'

/**
 * Said behind what is to be done: by how much it is late at `now`, or will be when the hands come to it (`at`, UTC ms), once
 * that is more than it may wait; empty where it is in time.
 */
export function lateText(item: AgendaItem, at: number | null, now: number): string {
  const late = lateBy(item, now)
  if (late !== null) return `, ${latenessText(late)} late`
  const then = at === null ? null : lateBy(item, at)
  return then === null ? '' : `, ${latenessText(then)} late by then`
}

/** From a minute on in whole ones: what is seen from the other end of the kitchen. */
export const latenessText = (seconds: number): string =>
  durationText(seconds < 60 ? seconds : Math.floor(seconds / 60) * 60)
