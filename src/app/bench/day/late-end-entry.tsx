import { useState } from 'react'
import { useBench } from '@/app/bench/bench-context.ts'
import { OddReading } from '@/app/bench/entries/odd-reading.tsx'
import { TextField } from '@/app/kit/field/text-field.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import { momentOf, typedTimeOfDay } from '@/core/session/press/time-of-day.ts'
import { impossibleTimeText } from '@/core/wording/bench/impossible-time-text.ts'
import { civilTime } from '@/core/wording/words/civil-time.ts'
import { clockTime } from '@/core/wording/words/clock-time.ts'
import { dayTime } from '@/core/wording/words/day-time.ts'

interface LateEndEntryProps {
  /** UTC ms. */
  beganAt: number
  plannedAt: number
  stepKey: string
  /** Logs the end at a moment; null stands for just now. */
  onEnd: (at: number | null) => Promise<unknown>
}

/** An end that is pressed hours after the planned one: asks what time it ended, which the press cannot tell. */
export function LateEndEntry({ beganAt, plannedAt, stepKey, onEnd }: LateEndEntryProps) {
  const { session } = useBench()
  const now = useServices().now()
  const { zone } = session
  const [text, setText] = useState('')
  const time = typedTimeOfDay(text)
  const at = time && momentOf(time, plannedAt, (moment) => civilTime(moment, zone))
  const problem = problemOf(at, { beganAt, now, zone })
  return (
    <>
      <OddReading
        words={{
          mend: `What time did it end? It was to end at ${dayTime(plannedAt, now, zone)}.`,
          beside: 'The end is logged at that time, not at the time of the press.',
        }}
      />
      <TextField
        label="It ended at"
        value={text}
        onValue={setText}
        maxLength={8}
        hint={at === null ? `Such as ${clockTime(plannedAt, zone)}.` : dayTime(at, now, zone)}
        problem={text === '' ? undefined : problem}
      />
      <Button
        kind="primary"
        size="bench"
        means={`late end/${stepKey}`}
        disabled={problem !== undefined}
        onPress={() => onEnd(at)}
      >
        It ended then
      </Button>
      <Button size="bench" means={`end just now/${stepKey}`} onPress={() => onEnd(null)}>
        It ended just now
      </Button>
    </>
  )
}

function problemOf(
  at: number | null,
  { beganAt, now, zone }: { beganAt: number; now: number; zone: string },
): string | undefined {
  if (at === null) return 'Write the time of day, such as 14:05.'
  if (at > now) return impossibleTimeText({ why: 'in-the-future' }, zone)
  if (at < beganAt) return impossibleTimeText({ why: 'ends-before-it-begins', beganAt }, zone)
  return undefined
}
