import { expect, it } from 'vitest'
import { solveDay } from '@/core/clock-plan/search/solve-day.ts'
import { checkDay } from './check-day.ts'
import { randomDay } from './random-day.ts'

/** A clock that a search turns on by looking at it, so that every run of the tests decides the same. */
function countingClock() {
  let looks = 0
  return () => {
    looks += 1
    return looks
  }
}

const parts = [0, 1, 2, 3, 4, 5]

it.each(parts)('every plan of 500 seeded days holds what it promises: part %i', (part) => {
  const counts = { plans: 0, proved: 0, gaveUp: 0 }
  for (let seed = part * 500 + 1; seed <= part * 500 + 500; seed += 1) {
    const problem = randomDay(seed)
    const handed: number[][] = []
    const solved = solveDay(
      problem,
      { clock: countingClock(), milliseconds: 120 },
      { better: ({ spreadRung, spanSeconds }) => handed.push([spreadRung, spanSeconds]) },
    )
    if (!solved.ok) {
      counts.gaveUp += solved.reason === 'no-time' ? 1 : 0
      continue
    }
    const { begins, rung, spreadRung, spanSeconds, proved, boundSeconds } = solved.plan
    const found = checkDay(problem, begins)
    expect([seed, found.faults]).toEqual([seed, []])
    expect(found.rung).toBeLessThanOrEqual(rung)
    expect([seed, found.spreadRung, found.spanSeconds]).toEqual([seed, spreadRung, spanSeconds])
    expect(boundSeconds).toBeLessThanOrEqual(spanSeconds)
    if (proved.span) expect(boundSeconds).toBe(spanSeconds)
    // Each plan handed on the way is no worse than the one before.
    for (const [at, [spread = 0, span = 0]] of handed.entries()) {
      const [before = spread, longer = span] = handed[at - 1] ?? []
      expect(spread < before || (spread === before && span <= longer)).toBe(true)
    }
    counts.plans += 1
    counts.proved += proved.rung && proved.spread && proved.span ? 1 : 0
  }
  expect(counts.plans).toBeGreaterThan(300)
  expect(counts.gaveUp).toBeLessThan(10)
  expect(counts.proved / counts.plans).toBeGreaterThan(0.85)
})
