import { useBench } from '@/app/bench/bench-context.ts'
import look from '@/app/bench/day/now.module.css'
import { WarningMark } from '@/app/kit/look/warning-mark.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import { unheardText } from '@/core/wording/bench/alarm-text.ts'
import { dayTime } from '@/core/wording/words/day-time.ts'
import type { Ringing } from './use-ringing.ts'

/** What came due while the page could not ring, told at return, until it is read. */
export function Missed({ ringing }: { ringing: Ringing }) {
  const { session } = useBench()
  const { now } = useServices()
  if (ringing.missed.length === 0) return null
  return (
    <div className={look.missed} role="status">
      <ul>
        {ringing.missed.map(({ key, text, dueAt, toldAt }) => (
          <li key={key}>
            <WarningMark />{' '}
            {unheardText(
              text,
              dayTime(dueAt, now(), session.zone),
              Math.round(((toldAt ?? now()) - dueAt) / 1000),
            )}
          </li>
        ))}
      </ul>
      <Button size="bench" onPress={ringing.forgetMissed}>
        Read
      </Button>
    </div>
  )
}
