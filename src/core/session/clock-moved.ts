import type { Standing } from './effective-events.ts'

/** Clocks of phone and tablet differ by seconds; a clock that stands further back than this was moved. */
const toleratedSeconds = 60

/** The latest stamp (UTC ms) that a device gave to an entry; null before its first. */
export function latestStamp(effective: readonly Standing[], device: string): number | null {
  return effective.reduce<number | null>(
    (latest, event) => (event.device === device ? Math.max(latest ?? event.at, event.at) : latest),
    null,
  )
}

/**
 * The latest stamp of a device (UTC ms), if that is still to come by the clock as it is now: the clock was set back, or began
 * anew after a dead battery. Null otherwise. A change to or from summer time moves no stamp.
 */
export function clockMoved(latest: number | null, now: number): number | null {
  return latest !== null && latest > now + toleratedSeconds * 1000 ? latest : null
}

/** What two clocks of one device show at one moment: that of the day, which can be set, and a steady one, which cannot. */
export interface TwoClocks {
  dayMilliseconds: number
  steadyMilliseconds: number
}

/**
 * By how much the clock of the day ran away from the steady one between two looks, in milliseconds, forwards above zero; null
 * where both tell of the same time gone by, but for a minute. Back, it was set; forwards, it was set or the device slept: in
 * some sleep the steady clock stands.
 */
export function clockJump(before: TwoClocks, after: TwoClocks): number | null {
  const byDay = after.dayMilliseconds - before.dayMilliseconds
  const jump = byDay - (after.steadyMilliseconds - before.steadyMilliseconds)
  return Math.abs(jump) > toleratedSeconds * 1000 ? jump : null
}
