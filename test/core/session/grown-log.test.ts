import fc from 'fast-check'
import { expect, test } from 'vitest'
import { effectiveEvents, eventsOfSession } from '@/core/session/effective-events.ts'
import type { Event } from '@/core/session/event-record.ts'

const sessionId = 'session-a'

const said = fc.record({
  device: fc.constantFrom('phone', 'phone', 'phone', 'tablet'),
  /** Above zero in most: clocks go forward, but for one that is set back. */
  seconds: fc.integer({ min: -3, max: 9 }),
  kind: fc.constantFrom('note', 'note', 'note', 'note', 'void', 'tasting-closed', 'unsealed'),
  /** Which entry is cited, from the first on; past the end none. Ones to come may be cited too, as a file can have it. */
  cites: fc.option(fc.nat(12), { freq: 2, nil: undefined }),
})

/** A log as it might be written on two devices, with ids that follow no order. */
function logOf(sayings: { device: string; seconds: number; kind: string; cites?: number }[]) {
  const counts = new Map<string, number>()
  let at = 100_000
  const idOf = (index: number) => `e-${(index * 7) % 31}`
  return sayings.map(({ device, seconds, kind, cites }, index): Event => {
    const count = (counts.get(device) ?? 0) + 1
    counts.set(device, count)
    at += seconds * 1000
    const corrects = cites === undefined ? {} : { corrects: idOf(cites) }
    const own = kind === 'note' ? { text: 'a note' } : kind === 'void' ? {} : { reason: 'late' }
    return {
      ...{ id: idOf(index), trialId: 'trial-a', sessionId, device, count, at, zone: 'UTC', kind },
      ...{ about: { kind: 'session', id: sessionId }, ...corrects, ...own },
    } as Event
  })
}

test('a log that grows from press to press stands as it does when it is read whole', () => {
  fc.assert(
    fc.property(
      fc.array(said, { minLength: 1, maxLength: 25 }),
      fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 1, maxLength: 6 }),
      fc.boolean(),
      (sayings, presses, byId) => {
        const log = logOf(
          sayings.map(({ cites, ...rest }) => ({
            ...rest,
            ...(cites !== undefined ? { cites } : {}),
          })),
        )
        let length = 0
        for (let press = 0; length < log.length; press += 1) {
          length += presses[press % presses.length] ?? 1
          const now = log.slice(0, length)
          if (byId) now.sort((one, other) => (one.id < other.id ? -1 : 1))
          // Fresh objects are of no log that was read before.
          const whole = effectiveEvents(structuredClone(now))
          expect(eventsOfSession(now, sessionId)).toEqual(whole)
        }
      },
    ),
    { numRuns: 200 },
  )
})

test('after a press only the new entry is looked at', () => {
  const log = logOf(
    Array.from({ length: 30 }, () => ({ device: 'phone', seconds: 1, kind: 'note' })),
  )
  const before = eventsOfSession(log.slice(0, 29), sessionId)
  let looks = 0
  const watched = log.slice(0, 29)
  for (const event of watched) {
    const { kind } = event
    const looked = () => {
      looks += 1
      return kind
    }
    Object.defineProperty(event, 'kind', { get: looked })
  }
  expect(eventsOfSession([...watched, log[29] as Event], sessionId)).toEqual([...before, log[29]])
  expect(looks).toBe(0)
  // A log that is asked about for the first time has every entry looked at, so the counting counts.
  eventsOfSession(watched.slice(1), 'session-a')
  expect(looks).toBeGreaterThan(0)
})
