import { expect, test } from 'vitest'
import { lateEnd } from '@/core/session/press/untimely-end.ts'
import { stepRuns } from '@/core/session/step-runs.ts'
import { minutes } from '../../../trial-of/made-up-day.ts'
import { planOf } from '../../../trial-of/plan-of.ts'
import { sessionOf } from '../../../trial-of/session-of.ts'

test('an end is late from two hours after the planned one on; a step that was not begun has none', () => {
  const [first] = stepRuns(sessionOf(), planOf(), [])
  if (!first) throw new Error('the day has a step')
  // 5 min of work and 30 min of waiting from 0: planned to end at minute 35, late after minute 155.
  const step = { ...first.step, kind: 'mix' as const, handsSeconds: 300, waitSeconds: 1800 }
  const run = { ...first, step, startedAt: 0 }
  expect(lateEnd(run, 155 * minutes)).toBeNull()
  expect(lateEnd(run, 156 * minutes)).toBe(35 * minutes)
  expect(lateEnd({ ...run, startedAt: null }, 156 * minutes)).toBeNull()
})
