import type { Standing } from './effective-events.ts'

/** Clocks of phone and tablet differ by seconds; a clock that stands further back than this was moved. */
const toleratedSeconds = 60

/**
 * When a device's last entry was stamped (UTC ms), if that is still to come by the clock as it is now: the clock was set back,
 * or began anew after a dead battery. Null otherwise. A change to or from summer time moves no stamp.
 */
export function clockMoved(
  effective: readonly Standing[],
  device: string,
  now: number,
): number | null {
  const last = Math.max(
    ...effective.flatMap((event) => (event.device === device ? [event.at] : [])),
  )
  return last > now + toleratedSeconds * 1000 ? last : null
}
