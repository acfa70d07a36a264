/** What the baker's device knows of another. Moments in UTC milliseconds by the baker's own clock. */
export interface Heard {
  device: string
  lastHeardAt: number | null
  revoked: boolean
}

export type Presence =
  | { state: 'never' }
  | { state: 'here' }
  | { state: 'quiet'; minutes: number }
  | { state: 'revoked' }

/** A device says every 20 seconds that it is there; one that was not heard for three of these is called quiet. */
export const saysEverySeconds = 20
const hereWithin = 3 * saysEverySeconds * 1000

/** Whether a device is at the table, and since how many whole minutes it was not heard. */
export function presenceOf({ lastHeardAt, revoked }: Heard, now: number): Presence {
  if (revoked) return { state: 'revoked' }
  if (lastHeardAt === null) return { state: 'never' }
  const since = Math.max(0, now - lastHeardAt)
  if (since < hereWithin) return { state: 'here' }
  return { state: 'quiet', minutes: Math.floor(since / 60_000) }
}
