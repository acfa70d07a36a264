import { expect, test } from 'vitest'
import { clockJump, clockMoved, latestStamp } from '@/core/session/clock-moved.ts'
import type { Standing } from '@/core/session/effective-events.ts'
import { pieceMeasures } from '@/core/session/piece-measures.ts'
import { stepDepartures } from '@/core/session/step-departures.ts'
import { stepRuns } from '@/core/session/step-runs.ts'
import { begun, minutes } from '../../trial-of/made-up-day.ts'
import { planOf } from '../../trial-of/plan-of.ts'
import { sessionOf } from '../../trial-of/session-of.ts'
import { madeLog } from './made-events.ts'

const dough = { kind: 'batch', id: 'batch-1' } as const

test('a clock that stands before the last entry of its device was moved; another device’s may differ', () => {
  const { events, log } = madeLog()
  log({ kind: 'note', text: 'sticky' }, { about: dough, at: begun })
  log({ kind: 'note', text: 'slack' }, { about: dough, at: begun + 90 * minutes, device: 'other' })
  const standing = events as Standing[]
  expect(clockMoved(latestStamp(standing, 'device-a'), begun + minutes)).toBeNull()
  expect(clockMoved(latestStamp(standing, 'device-a'), begun - 30_000)).toBeNull()
  expect(clockMoved(latestStamp(standing, 'device-a'), begun - 60 * minutes)).toBe(begun)
  expect(clockMoved(latestStamp([], 'device-a'), begun)).toBeNull()
})

test('a clock that runs away from the steady one was moved, forwards or back; a minute is forgiven', () => {
  const before = { dayMilliseconds: begun, steadyMilliseconds: 4_000 }
  const after = (day: number, steady: number) => ({
    ...{ dayMilliseconds: begun + day, steadyMilliseconds: 4_000 + steady },
  })
  expect(clockJump(before, after(5_000, 5_000))).toBeNull()
  expect(clockJump(before, after(60_000, 5_000))).toBeNull()
  // 58 minutes on within five seconds; half an hour back within as many.
  expect(clockJump(before, after(58 * minutes + 5_000, 5_000))).toBe(58 * minutes)
  expect(clockJump(before, after(-30 * minutes + 5_000, 5_000))).toBe(-30 * minutes)
  // An hour in which both ran is only an hour.
  expect(clockJump(before, after(60 * minutes, 60 * minutes))).toBeNull()
})

test('with the clock set back between two stamps no duration is told, least of all one below zero', () => {
  const plan = planOf()
  // A step that ends by the clock, so that its wait is held against the plan.
  const steps = plan.steps.map((step) => ({ ...step, endsBy: { by: 'clock' as const } }))
  const { events, log } = madeLog('session-1')
  const step = { stepId: 'step-mix', repeat: 1 }
  log({ kind: 'step-started', ...step }, { about: dough, at: begun })
  log({ kind: 'step-stopped', ...step }, { about: dough, at: begun - 60 * minutes })
  log({ kind: 'bake-in' }, { about: { kind: 'piece', id: 'piece-1' }, at: begun - 40 * minutes })
  log({ kind: 'bake-out' }, { about: { kind: 'piece', id: 'piece-1' }, at: begun - 50 * minutes })
  const standing = events as Standing[]
  const runs = stepRuns(sessionOf(), { ...plan, steps }, standing)
  const waits = stepDepartures(runs, { ...plan, steps }, standing).filter(
    ({ what }) => what === 'wait',
  )
  expect(waits).toEqual([])
  const piece = pieceMeasures(sessionOf(), plan, standing).find(
    ({ pieceId }) => pieceId === 'piece-1',
  )
  expect(piece).toMatchObject({ bakeSeconds: null, ageAtBakingSeconds: null })
})
