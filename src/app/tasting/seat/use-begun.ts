import { useEffect, useEffectEvent, useState } from 'react'
import { useThrown } from '@/app/kit/page/use-thrown.ts'
import type { Seat } from './seat.ts'

/**
 * Whether the ballot of a code was begun before, as after a reload: then what comes before it is passed over. Null while that is
 * looked up.
 */
export function useBegun(seat: Seat, code: string, onBegun: () => unknown): boolean | null {
  const [begun, setBegun] = useState<boolean | null>(null)
  const watch = useThrown()
  const look = useEffectEvent(async () => {
    const kept = await seat.draftOf(code).load()
    setBegun(kept?.startedAt !== undefined)
    // What cannot be kept of it is looked up again next time.
    if (kept?.startedAt !== undefined) void Promise.resolve(onBegun()).catch(() => undefined)
  })
  useEffect(() => {
    watch(look())
  }, [watch])
  return begun
}
