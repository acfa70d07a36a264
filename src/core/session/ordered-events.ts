import type { Event } from './event-record.ts'

/**
 * The log in its order: on one device by its running count, across devices by stamp, then by id. A device whose clock was set
 * back keeps its count order: its later events count as no earlier than those before. The order of arrival does not matter,
 * and an event that arrives twice stands once.
 */
export function orderedEvents(events: readonly Event[]): Event[] {
  const queues = [...byDevice(events).values()].map((own) => {
    let latest = 0
    return own.toSorted(byCount).map((event) => {
      latest = Math.max(latest, event.at)
      return { event, latest }
    })
  })
  const heads = queues.map(() => 0)
  const ordered: Event[] = []
  for (;;) {
    let next: { queue: number; event: Event; latest: number } | null = null
    for (const [queue, waiting] of queues.entries()) {
      const head = waiting[heads[queue] ?? 0]
      if (head && (!next || comesFirst(head, next))) next = { queue, ...head }
    }
    if (!next) return ordered
    ordered.push(next.event)
    heads[next.queue] = (heads[next.queue] ?? 0) + 1
  }
}

function byDevice(events: readonly Event[]): Map<string, Event[]> {
  const devices = new Map<string, Event[]>()
  for (const event of new Map(events.map((one) => [one.id, one])).values()) {
    const own = devices.get(event.device)
    if (own) own.push(event)
    else devices.set(event.device, [event])
  }
  return devices
}

interface Head {
  event: Event
  latest: number
}

const comesFirst = (one: Head, other: Head) =>
  one.latest < other.latest || (one.latest === other.latest && one.event.id < other.event.id)

const byCount = (one: Event, other: Event) =>
  one.count - other.count || (one.id < other.id ? -1 : 1)
