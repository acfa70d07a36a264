import { useBench } from '@/app/bench/bench-context.ts'
import { Notice } from '@/app/kit/page/notice.tsx'
import { useTicking } from '@/app/kit/time/use-ticking.ts'
import { useServices } from '@/app/services/services.ts'
import { clockMoved } from '@/core/session/clock-moved.ts'
import { dayTime } from '@/core/wording/words/day-time.ts'

/** Says that this device's clock was moved back, for as long as its last entry is still to come. */
export function ClockNote({ device }: { device: string }) {
  const { events, session } = useBench()
  const now = useTicking(useServices().now)
  const last = clockMoved(events, device, now)
  if (last === null) return null
  return (
    <Notice kind="caution" title="This device’s clock was moved">
      <p>
        It shows {dayTime(now, now, session.zone)}, but the last entry was made at{' '}
        {dayTime(last, now, session.zone)}. Set the clock right; a time that was logged wrongly can
        be corrected in the log.
      </p>
    </Notice>
  )
}
