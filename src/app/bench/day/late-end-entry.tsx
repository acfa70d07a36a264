import { useState } from 'react'
import { useBench } from '@/app/bench/bench-context.ts'
import { OddReading } from '@/app/bench/entries/odd-reading.tsx'
import { TimeOfDayField } from '@/app/kit/time/time-of-day-field.tsx'
import { useServices } from '@/app/services/services.ts'
import { momentOf, typedTimeOfDay } from '@/core/session/press/time-of-day.ts'
import { impossibleTimeText } from '@/core/wording/bench/impossible-time-text.ts'
import { civilTime, clockTime, hourText } from '@/core/wording/words/civil-time.ts'
import { dayTime } from '@/core/wording/words/day-time.ts'
import { noTimeOfDayText } from '@/core/wording/words/time-of-day-text.ts'

const label = 'It ended at'

interface LateEndEntryProps {
  /** UTC ms; null where the hands were not taken off. */
  beganAt: number
  handsOffAt: number | null
  plannedAt: number
  /** The moment that was typed (UTC ms); undefined while none stands that can be. */
  onMoment: (at: number | undefined) => void
}

/** An end that is pressed hours after the planned one: asks what time it ended, which the press cannot tell. */
export function LateEndEntry({ beganAt, handsOffAt, plannedAt, onMoment }: LateEndEntryProps) {
  const { session } = useBench()
  const now = useServices().now()
  const { zone } = session
  const [text, setText] = useState('')
  const momentIn = (typed: string) => {
    const time = typedTimeOfDay(typed)
    return time && momentOf(time, plannedAt, (moment) => civilTime(moment, zone))
  }
  const at = momentIn(text)
  const problem = problemOf(at, { beganAt, handsOffAt, now, zone })
  const type = (typed: string) => {
    setText(typed)
    const moment = momentIn(typed)
    const stands = problemOf(moment, { beganAt, handsOffAt, now, zone }) === undefined
    onMoment(stands && moment !== null ? moment : undefined)
  }
  return (
    <>
      <OddReading
        words={{
          mend: `What time did it end? It was to end at ${dayTime(plannedAt, now, zone)}.`,
          beside: 'The end is logged at that time, not at the time of the press.',
        }}
      />
      <TimeOfDayField
        label={label}
        text={text}
        onText={type}
        onLeave={(time) => type(hourText(time))}
        hint={at === null ? `Such as ${clockTime(plannedAt, zone)}.` : dayTime(at, now, zone)}
        problem={text === '' ? undefined : problem}
      />
    </>
  )
}

function problemOf(
  at: number | null,
  {
    beganAt,
    handsOffAt,
    now,
    zone,
  }: Pick<LateEndEntryProps, 'beganAt' | 'handsOffAt'> & { now: number; zone: string },
): string | undefined {
  if (at === null) return noTimeOfDayText(label)
  if (at > now) return impossibleTimeText({ why: 'in-the-future' }, zone)
  if (handsOffAt !== null && at < handsOffAt)
    return impossibleTimeText({ why: 'before-hands-off', handsOffAt }, zone)
  if (at < beganAt) return impossibleTimeText({ why: 'ends-before-it-begins', beganAt }, zone)
  return undefined
}
