import type { AgendaItem } from '@/core/session/agenda.ts'

/** A moment at which the hands are called: UTC ms, and by what. */
export interface Alarm {
  /** The same as long as it calls to the same thing, also when its moment moves. */
  key: string
  at: number
  item: AgendaItem
}

/**
 * What is to ring, soonest first: every wait and bake that runs, at its end (one that ends by a mark or reading: when to look at
 * it), and every step that is to begin at a moment of its own, once the hands come to it: `beginsAt` (UTC ms) tells. Work by hand that
 * runs rings for nothing: the hands are on it.
 */
export function dayAlarms(
  items: readonly AgendaItem[],
  beginsAt: (item: AgendaItem) => number | null = ({ dueAt }) => dueAt,
): Alarm[] {
  return items
    .flatMap((item): Alarm[] => {
      const { unit, step, repeat, do: what, handsOn } = item
      const at = what === 'start' ? beginsAt(item) : item.dueAt
      if (at === null || handsOn) return []
      if (what === 'end' && step.kind !== 'bake' && step.waitSeconds <= 0) return []
      return [{ key: `${unit.id} ${step.id} ${repeat} ${what}`, at, item }]
    })
    .toSorted((one, other) => one.at - other.at)
}

/** What rang, or should have, after `since` and up to `now` (UTC ms), the soonest first. */
export function rungBetween(alarms: readonly Alarm[], since: number, now: number): Alarm[] {
  return alarms.filter(({ at }) => at > since && at <= now)
}

/** What was called to and now lies further ahead than this is another appointment (ms). */
const anewMilliseconds = 300_000

/** When each thing was called to (UTC ms, by its key), without what has left the list or was put off for longer. */
export function stillCalled(
  called: ReadonlyMap<string, number>,
  alarms: readonly Alarm[],
  now: number,
): Map<string, number> {
  const moments = new Map(alarms.map(({ key, at }) => [key, at]))
  return new Map(
    [...called].filter(([key]) => (moments.get(key) ?? Infinity) - now <= anewMilliseconds),
  )
}

/** All but what was called to already and slides on while it waits for the hands: that is not called to minute by minute. */
export function notYetCalled(alarms: readonly Alarm[], called: ReadonlyMap<string, number>) {
  return alarms.filter(({ key, at }) => (called.get(key) ?? at) === at)
}
