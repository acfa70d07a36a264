import type { Event } from '@/core/session/event-record.ts'

/** An entry before the notebook takes it: id, device, count and zone are added there, the time where it brings none of its own. */
export type NewEvent = Event extends infer Each
  ? Each extends Event
    ? Omit<Each, 'id' | 'device' | 'count' | 'at' | 'zone'> & { at?: number }
    : never
  : never

/** What a bench entry says; trial and session are filled in. */
export type BenchEntry = NewEvent extends infer Each
  ? Each extends NewEvent
    ? Omit<Each, 'trialId' | 'sessionId'>
    : never
  : never
