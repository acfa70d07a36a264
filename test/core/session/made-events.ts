import type { About, Event } from '@/core/session/event-record.ts'

type Bare = Event extends infer Each
  ? Each extends Event
    ? Omit<Each, 'id' | 'trialId' | 'sessionId' | 'device' | 'count' | 'at' | 'zone' | 'about'>
    : never
  : never

interface Where {
  at?: number
  device?: string
  id?: string
  about?: About
  sessionId?: string
}

/** A log being written: each event gets the next count of its device, an id and a stamp one second after the last. */
export function madeLog(sessionId = 'session-a') {
  const events: Event[] = []
  const counts = new Map<string, number>()
  const log = (bare: Bare, where: Where = {}): Event => {
    const device = where.device ?? 'device-a'
    const count = (counts.get(device) ?? 0) + 1
    counts.set(device, count)
    const event: Event = {
      id: where.id ?? `e-${events.length + 1}`,
      trialId: 'trial-a',
      sessionId: where.sessionId ?? sessionId,
      device,
      count,
      at: where.at ?? 10_000 + events.length * 1000,
      zone: 'Europe/Zurich',
      about: where.about ?? { kind: 'session', id: sessionId },
      ...bare,
    }
    events.push(event)
    return event
  }
  return { events, log }
}
