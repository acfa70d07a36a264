import { type Presence, presenceOf } from '@/core/table/presence.ts'
import { waiting } from '@/core/table/receipt.ts'
import type { HeardSeat, Invited } from '@/exchange/table-store.ts'
import { sameClock } from '@/notebook/take-entry.ts'
import type { Part } from '@/table/subjects.ts'

/** One part, or one taster, as the table's page shows it. */
export interface TableSeat {
  part: Part
  tasterId: string | null
  /** The login that holds now; null until a code was shown. */
  invited: Invited | null
  presence: Presence
  /** Entries that its device has written and this one has not. */
  toCome: number
  /** How many devices use the one code at the same time. */
  devices: number
  /** How much later this device's clock stands than theirs, in milliseconds; null where both stand alike, or before an entry came. */
  clockLater: number | null
  notTaken: { count: number; reason: string }[]
}

/** How a part stands now: by its newest login that was not taken back. */
export function seatOf(
  { part, tasterId }: { part: Part; tasterId: string | null },
  invited: readonly Invited[],
  heard: readonly HeardSeat[],
  now: number,
): TableSeat {
  const own = invited.filter((each) => each.part === part && each.tasterId === tasterId)
  const holds = own.findLast(({ revokedAt }) => revokedAt === null) ?? null
  const seats = heard.filter(({ login }) => login === holds?.login.name)
  const times = seats.map(({ lastHeardAt }) => lastHeardAt)
  const at = (lastHeardAt: number | null) =>
    presenceOf({ device: '', lastHeardAt, revoked: own.length > 0 && holds === null }, now)
  return {
    ...{ part, tasterId, invited: holds },
    presence: at(times.length === 0 ? null : Math.max(...times)),
    toCome: seats.reduce(
      (total, { receipt, written }) => total + waiting(receipt, written).length,
      0,
    ),
    devices: seats.filter(({ lastHeardAt }) => at(lastHeardAt).state === 'here').length,
    clockLater: otherClock(seats),
    notTaken: seats.flatMap(({ refused }) => refused),
  }
}

/** By the device that was heard last. */
function otherClock(seats: readonly HeardSeat[]): number | null {
  const newest = seats.toSorted((a, b) => b.lastHeardAt - a.lastHeardAt)[0]
  const later = newest?.ownerLater ?? 0
  return Math.abs(later) < sameClock ? null : later
}
