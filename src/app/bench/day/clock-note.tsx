import { useEffect, useMemo } from 'react'
import { useStore } from 'zustand'
import { useBench } from '@/app/bench/bench-context.ts'
import { Notice } from '@/app/kit/page/notice.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useShownOfClock } from '@/app/kit/time/use-ticking.ts'
import { clockMove, forgetClockMove, watchClock } from '@/app/services/clock-watch.ts'
import { useServices } from '@/app/services/services.ts'
import { clockMoved, latestStamp } from '@/core/session/clock-moved.ts'
import { clockBehindText, clockJumpedText } from '@/core/wording/bench/clock-moved-text.ts'

/**
 * Says that this device's clock was moved: for as long as its last entry is still to come, and, where it jumped under an open
 * page, until that is closed.
 */
export function ClockNote({ device }: { device: string }) {
  const { events, session } = useBench()
  const { notebook, now: clock } = useServices()
  useEffect(() => watchClock(notebook, clock), [notebook, clock])
  const latest = useMemo(() => latestStamp(events, device), [events, device])
  // While the last entry is still to come, the note says the minute.
  useShownOfClock(clock, (now) => clockMoved(latest, now) !== null && Math.floor(now / 60_000))
  const move = useStore(clockMove, (state) => state.move)
  const now = clock()
  const last = clockMoved(latest, now)
  const behind = last === null ? null : clockBehindText(last, now, session.zone)
  const jumped = move ? clockJumpedText(move.from, move.to, session.zone) : null
  return (
    <>
      {behind ? (
        <Notice kind="caution" title={behind.title}>
          <p>{behind.text}</p>
        </Notice>
      ) : null}
      {jumped ? (
        <Notice kind="caution" title={jumped.title}>
          <p>{jumped.text}</p>
          <Button kind="quiet" onPress={() => forgetClockMove(notebook)}>
            Close
          </Button>
        </Notice>
      ) : null}
    </>
  )
}
