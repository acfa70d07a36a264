import type { EarlyEnd } from '@/core/session/press/untimely-end.ts'
import type { Session } from '@/core/session/session-record.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { listText } from '@/core/wording/words/list-text.ts'
import { unitLetter } from '@/core/wording/words/unit-name.ts'

/** What ending a rest now would cost, in two sentences at most. */
export function earlyEndText(
  { leftSeconds, restedSeconds, plannedSeconds, others }: EarlyEnd,
  session: Session,
): string {
  const rested = restedSeconds < 1 ? 'no rest at all' : `a rest of ${durationText(restedSeconds)}`
  const cost = `${durationText(leftSeconds)} are left: ended now it has had ${rested}, planned ${durationText(plannedSeconds)}.`
  const had = others.map(
    ({ unit, restedSeconds: seconds }) =>
      `${unitLetter(session, unit).letter} ${durationText(seconds)}`,
  )
  return had.length === 0 ? cost : `${cost} The others had: ${listText(had)}.`
}
