import { describe, expect, it } from 'vitest'
import { deviationOf, leastDeviation } from '@/core/clock-plan/search/least-deviation.ts'
import { solveDay } from '@/core/clock-plan/search/solve-day.ts'
import { wholeHalfMinutes } from '@/core/clock-plan/search/whole-half-minutes.ts'
import { problemOf, referenceCases } from '../../../outside/clock-reference.ts'
import { checkDay } from './check-day.ts'
import { countedBudget } from './counted-budget.ts'
import { randomDay } from './random-day.ts'

/** The least sum for the orders of a reference plan, found by another solver: see the README there. */
describe('the least sum of deviations within an order', () => {
  const feasible = referenceCases().filter(({ expect: { feasible: goes } }) => goes)

  it.each(feasible)('$name', ({ day, expect: stated }) => {
    if (!stated.feasible) return
    const problem = problemOf(day)
    const begins = leastDeviation(problem, stated.plan, () => stated.z)
    expect(checkDay(problem, begins)).toEqual({
      ...{ faults: [], rung: expect.any(Number), spreadRung: expect.any(Number) },
      spanSeconds: stated.span,
    })
    expect(checkDay(problem, begins).rung).toBeLessThanOrEqual(stated.z)
    expect(checkDay(problem, begins).spreadRung).toBeLessThanOrEqual(Math.max(1, stated.E))
    expect(deviationOf(problem, begins)).toBeCloseTo(stated.sumInOrder, 5)
  })
})

it('moves what is away from the oven to half minutes, or leaves the seconds, and never breaks a day', () => {
  let whole = 0
  for (let seed = 1; seed <= 300; seed += 1) {
    const problem = randomDay(seed)
    const solved = solveDay(problem, countedBudget(60))
    if (!solved.ok) continue
    const { rung, begins } = solved.plan
    const near = new Set(
      problem.tasks.flatMap(({ id, step }) =>
        ['launch', 'pull', 'serve'].includes(step) ? [id] : [],
      ),
    )
    const straight = leastDeviation(problem, begins, () => rung)
    expect(deviationOf(problem, straight)).toBeLessThanOrEqual(deviationOf(problem, begins) + 1e-9)
    const rounded = wholeHalfMinutes(problem, straight, () => rung, near)
    for (const found of [straight, rounded]) {
      const checked = checkDay(problem, found)
      expect([seed, checked.faults, checked.rung <= rung]).toEqual([seed, [], true])
      expect(checked.spreadRung).toBeLessThanOrEqual(solved.plan.spreadRung)
      expect(checked.spanSeconds).toBeLessThanOrEqual(solved.plan.spanSeconds)
    }
    const far = problem.tasks.filter(({ id }) => !near.has(id))
    whole += far.every(({ id }) => (rounded[id] ?? 1) % 30 === 0) ? 1 : 0
  }
  expect(whole).toBeGreaterThan(50)
})
