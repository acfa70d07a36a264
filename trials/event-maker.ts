import type { Event } from '@/core/session/event-record.ts'

type Said = Event extends infer Each
  ? Each extends Event
    ? Omit<Each, 'id' | 'trialId' | 'sessionId' | 'device' | 'count' | 'zone'>
    : never
  : never

interface Writer {
  trialId: string
  zone: string
  newId: () => string
}

export interface EventLog {
  events: Event[]
  /** The running number of the device, which ballots share. */
  nextCount: () => number
  write: (sessionId: string | null, said: Said) => void
}

export const sampleDevice = 'club-tablet'

/** A log of one device: each line gets the next number. Lines are written in the order they happened. */
export function eventLog({ trialId, zone, newId }: Writer): EventLog {
  const events: Event[] = []
  let count = 0
  const nextCount = () => {
    count += 1
    return count
  }
  return {
    events,
    nextCount,
    write: (sessionId, said) => {
      const stamped = {
        id: newId(),
        trialId,
        sessionId,
        device: sampleDevice,
        count: nextCount(),
        zone,
      }
      events.push({ ...said, ...stamped } as Event)
    },
  }
}
