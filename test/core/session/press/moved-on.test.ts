import fc from 'fast-check'
import { expect, test } from 'vitest'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import type { Event } from '@/core/session/event-record.ts'
import { movedOn } from '@/core/session/press/moved-on.ts'
import type { NewEvent } from '@/core/session/press/new-event.ts'
import { madeLog } from '../made-events.ts'

const of = { trialId: 'trial-a', sessionId: 'session-a' }
const dough = (id: string) => ({ kind: 'batch' as const, id })
const step = (kind: 'step-started' | 'step-stopped', id = 'A', stepId = 'mix'): NewEvent => ({
  ...{ ...of, kind, stepId, repeat: 1, about: dough(id) },
})
const weighed = (grams: number, corrects?: string): NewEvent => ({
  ...{ ...of, kind: 'weighed', ingredientId: 'flour', grams, about: dough('A') },
  ...(corrects === undefined ? {} : { corrects }),
})
const logOf = (...presses: NewEvent[]): Event[] => {
  const { events, log } = madeLog()
  for (const { trialId, sessionId, about, ...bare } of presses) log(bare, { about })
  return events
}
const idsOf = (events: readonly Event[]) => new Set(effectiveEvents(events).map(({ id }) => id))

test('a step that was begun is not begun again, and one that was ended not ended again', () => {
  const log = logOf(step('step-started'), step('step-stopped'))
  expect(movedOn(log, [step('step-started')])).toMatchObject({ why: 'already-begun', by: log[0] })
  expect(movedOn(log, [step('step-stopped')])).toMatchObject({ why: 'already-ended', by: log[1] })
  expect(movedOn(log, [step('step-started', 'B')])).toBeNull()
  expect(movedOn(log, [{ ...step('step-started'), repeat: 2 } as NewEvent])).toBeNull()
})

test('what was taken back can be begun anew, and is not taken back twice', () => {
  const log = logOf(step('step-started'), {
    ...{ ...of, kind: 'void', about: dough('A'), corrects: 'e-1' },
  })
  expect(movedOn(log, [step('step-started')])).toBeNull()
  const again: NewEvent = { ...of, kind: 'void', about: dough('A'), corrects: 'e-1' }
  expect(movedOn(log, [again])).toMatchObject({ why: 'taken-back', by: null })
})

test('a weight pressed in the state before another tab’s weight is refused; one that has seen it may correct it', () => {
  const before = logOf()
  const now = logOf(weighed(500))
  expect(movedOn(now, [weighed(500)], idsOf(before))).toMatchObject({ why: 'changed' })
  expect(movedOn(now, [weighed(498, 'e-1')], idsOf(now))).toBeNull()
  // Added in a second go, knowing of the first.
  expect(movedOn(now, [weighed(20)], idsOf(now))).toBeNull()
})

test('property: of two presses made in one state the second is taken only where it says something of another thing', () => {
  const press = fc.oneof(
    fc
      .record({
        kind: fc.constantFrom('step-started' as const, 'step-stopped' as const),
        id: fc.constantFrom('A', 'B'),
        stepId: fc.constantFrom('mix', 'fold'),
      })
      .map(({ kind, id, stepId }) => step(kind, id, stepId)),
    fc.integer({ min: 1, max: 900 }).map((grams) => weighed(grams)),
  )
  const subject = (event: NewEvent) =>
    event.kind === 'weighed' ? 'flour of A' : `line ${event.about.id}`
  fc.assert(
    fc.property(press, press, (one, other) => {
      const seen = idsOf([])
      const found = movedOn(logOf(one), [other], seen)
      expect(found === null).toBe(subject(one) !== subject(other))
    }),
  )
})
