import { expect, test } from 'vitest'
import type { Standing } from '@/core/session/effective-events.ts'
import { samePress } from '@/core/session/press/same-press.ts'

const stamp = (count: number, at: number, device = 'phone'): Standing => ({
  ...{ id: `event-${count}-${device}`, trialId: 'trial-1', sessionId: 'session-1', zone: 'UTC' },
  ...{ device, count, at, kind: 'rise', about: { kind: 'batch', id: 'batch-1' }, percent: 50 },
})
const counts = (press: Standing[]) => press.map(({ count }) => count)

test('entries of one moment with running numbers that follow each other are one press, last first', () => {
  const log = [stamp(1, 1000), stamp(2, 5000), stamp(3, 5000), stamp(4, 5000)]
  expect(counts(samePress(log, stamp(4, 5000)))).toEqual([4, 3, 2])
})

test('a gap in the numbers, another moment and another device end the press', () => {
  expect(counts(samePress([stamp(1, 5000), stamp(3, 5000)], stamp(3, 5000)))).toEqual([3])
  expect(counts(samePress([stamp(2, 4999), stamp(3, 5000)], stamp(3, 5000)))).toEqual([3])
  expect(counts(samePress([stamp(2, 5000, 'tablet')], stamp(3, 5000)))).toEqual([3])
})

test('the lock that came with the first mix is left standing', () => {
  const { percent, ...rest } = stamp(1, 5000) as Extract<Standing, { kind: 'rise' }>
  expect(percent).toBe(50)
  const lock: Standing = { ...rest, kind: 'lock', about: { kind: 'trial', id: 'trial-1' } }
  expect(counts(samePress([lock, stamp(2, 5000)], stamp(2, 5000)))).toEqual([2])
})
