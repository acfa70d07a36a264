import { expect, test } from 'vitest'
import type { Standing } from '@/core/session/effective-events.ts'
import { impossibleTime } from '@/core/session/press/impossible-time.ts'
import { madeLog } from '../made-events.ts'

const dough = { kind: 'batch', id: 'A' } as const
const { events, log } = madeLog()
const begun = log({ kind: 'step-started', stepId: 'mix', repeat: 1 }, { about: dough, at: 100 })
const ended = log({ kind: 'step-stopped', stepId: 'mix', repeat: 1 }, { about: dough, at: 200 })
const other = log({ kind: 'step-stopped', stepId: 'mix', repeat: 2 }, { about: dough, at: 300 })
const day = { log: events as Standing[], now: 400, dealtAt: 50 }

test('nothing ends before it begins, begins after it ends, comes from the future or from before the session', () => {
  expect(impossibleTime(ended, 99, day)).toEqual({ why: 'ends-before-it-begins', beganAt: 100 })
  expect(impossibleTime(ended, 100, day)).toBeNull()
  expect(impossibleTime(begun, 201, day)).toEqual({ why: 'begins-after-it-ends', endedAt: 200 })
  expect(impossibleTime(begun, 60, day)).toBeNull()
  expect(impossibleTime(begun, 49, day)).toEqual({ why: 'before-the-session' })
  expect(impossibleTime(other, 401, day)).toEqual({ why: 'in-the-future' })
  // Another repeat is another step.
  expect(impossibleTime(other, 60, day)).toBeNull()
})

test('hands come off a step after it began and before it ends, whichever of the three is moved', () => {
  const made = madeLog()
  const of = { about: dough } as const
  const first = made.log({ kind: 'step-started', stepId: 'mix', repeat: 1 }, { ...of, at: 100 })
  const off = made.log({ kind: 'hands-off', stepId: 'mix', repeat: 1 }, { ...of, at: 150 })
  const last = made.log({ kind: 'step-stopped', stepId: 'mix', repeat: 1 }, { ...of, at: 200 })
  const its = { log: made.events as Standing[], now: 400, dealtAt: 50 }
  expect(impossibleTime(off, 99, its)).toEqual({ why: 'ends-before-it-begins', beganAt: 100 })
  expect(impossibleTime(off, 201, its)).toEqual({ why: 'begins-after-it-ends', endedAt: 200 })
  expect(impossibleTime(off, 100, its)).toBeNull()
  expect(impossibleTime(off, 200, its)).toBeNull()
  expect(impossibleTime(first, 151, its)).toEqual({ why: 'after-hands-off', handsOffAt: 150 })
  expect(impossibleTime(last, 149, its)).toEqual({ why: 'before-hands-off', handsOffAt: 150 })
  expect(impossibleTime(last, 150, its)).toBeNull()
})
