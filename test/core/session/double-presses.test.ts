import { expect, test } from 'vitest'
import { doublePresses } from '@/core/session/double-presses.ts'
import type { Event } from '@/core/session/event-record.ts'

const at = Date.UTC(2026, 4, 9, 14, 2)
const stopped = (id: string, device: string, later = 0, repeat = 1): Event => ({
  ...{ id, trialId: 'trial', sessionId: 'session', device, count: 1, at: at + later, zone: 'UTC' },
  ...{ about: { kind: 'batch', id: 'dough' }, kind: 'step-stopped', stepId: 'mix', repeat },
})
const pairs = (events: Event[]) =>
  doublePresses(events).map(({ first, second }) => [first.id, second.id])

test('the same press of two devices is told once, the earlier first, in whatever order they came', () => {
  expect(pairs([stopped('b', 'oven', 40), stopped('a', 'bench')])).toEqual([['a', 'b']])
})

test('another repeat, or the same device, is no double press', () => {
  expect(pairs([stopped('a', 'bench'), stopped('b', 'oven', 40, 2)])).toEqual([])
  expect(pairs([stopped('a', 'bench'), stopped('b', 'bench', 40)])).toEqual([])
})

test('taking one of the two back ends the matter', () => {
  const {
    stepId: _s,
    repeat: _r,
    ...base
  } = stopped('c', 'oven', 90) as Extract<Event, { kind: 'step-stopped' }>
  const undone: Event = { ...base, kind: 'void', corrects: 'b' }
  expect(pairs([stopped('a', 'bench'), stopped('b', 'oven', 40), undone])).toEqual([])
})
