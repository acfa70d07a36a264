import type { Standing } from '@/core/session/effective-events.ts'
import type { Event } from '@/core/session/event-record.ts'
import { impossibleTime } from '@/core/session/press/impossible-time.ts'
import { momentOf, typedTimeOfDay } from '@/core/session/press/time-of-day.ts'
import type { Session } from '@/core/session/session-record.ts'
import { impossibleTimeText, neverShownText } from '@/core/wording/bench/impossible-time-text.ts'
import { civilTime } from '@/core/wording/words/civil-time.ts'
import { noTimeOfDayText } from '@/core/wording/words/time-of-day-text.ts'

/** The field in which the time of a correction is typed. */
export const correctedTimeLabel = 'It happened at'

/** The moment that a typed time of day stands for in a correction, or what is wrong with it. */
export function typedMoment(
  event: Event,
  text: string,
  { log, now, session }: { log: readonly Standing[]; now: number; session: Session },
): { ok: true; at: number } | { ok: false; problem: string } {
  const time = typedTimeOfDay(text)
  if (!time) return { ok: false, problem: noTimeOfDayText(correctedTimeLabel) }
  const { zone, createdAt } = session
  const at = momentOf(time, event.at, (moment) => civilTime(moment, zone))
  if (at === null) return { ok: false, problem: neverShownText }
  // A time that stands is not judged again: a clock that was set may have made it odd.
  const found = at === event.at ? null : impossibleTime(event, at, { log, now, dealtAt: createdAt })
  return found ? { ok: false, problem: impossibleTimeText(found, zone) } : { ok: true, at }
}
