import { describe, expect, it } from 'vitest'
import { culpritsOf, mendsOf } from '@/core/clock-plan/search/mends.ts'
import { solveDay } from '@/core/clock-plan/search/solve-day.ts'
import { problemOf, referenceCases } from '../../../outside/clock-reference.ts'
import { checkDay } from './check-day.ts'
import { countedBudget } from './counted-budget.ts'

const cases = referenceCases()

/** Rung, spread and span proved least by another solver, one rung or second less being impossible: see the README there. */
describe('days with a proven best plan', () => {
  const feasible = cases.filter(({ expect: { feasible: goes } }) => goes)

  it.each(feasible)('$name', ({ day, expect: stated }) => {
    if (!stated.feasible) return
    const problem = problemOf(day)
    expect(checkDay(problem, stated.plan)).toEqual({
      ...{ faults: [], rung: stated.z, spreadRung: stated.E, spanSeconds: stated.span },
    })
    const solved = solveDay(problem, countedBudget(20_000))
    if (!solved.ok) throw new Error(solved.reason)
    const { begins, ...plan } = solved.plan
    expect(plan).toEqual({
      ...{ rung: stated.z, spreadRung: stated.E, spanSeconds: stated.span },
      proved: { rung: true, spread: true, span: true },
      boundSeconds: stated.span,
    })
    expect(checkDay(problem, begins)).toEqual({
      ...{ faults: [], rung: stated.z, spreadRung: stated.E, spanSeconds: stated.span },
    })
  })
})

describe('days on which nothing fits', () => {
  const infeasible = cases.filter(({ expect: { feasible: goes } }) => !goes)

  it.each(infeasible)('$name', ({ day, expect: stated }) => {
    if (stated.feasible) return
    const problem = problemOf(day)
    expect(solveDay(problem, countedBudget(20_000))).toEqual({ ok: false, reason: 'nothing-fits' })
    const mends = mendsOf(problem, countedBudget(10_000))
    const of = (kind: string) => mends.find(({ mend }) => mend === kind)
    const { laterEndSeconds, rung, sameForAll, freeOvenOrder } = stated.mends
    if (laterEndSeconds !== undefined)
      expect(of('later-end')).toEqual({ mend: 'later-end', seconds: laterEndSeconds })
    if (rung !== undefined) expect(of('wider-waits')).toEqual({ mend: 'wider-waits', rung })
    if (freeOvenOrder) expect(of('free-oven-order')).toBeDefined()
    if (sameForAll) {
      const found = of('same-for-all')
      const seconds = found && 'seconds' in found ? Math.abs(found.seconds) : Number.NaN
      expect(seconds).toBeLessThanOrEqual(Math.abs(sameForAll.minutes) * 60)
    }
    expect(mends.length).toBeGreaterThan(0)
    expect(culpritsOf(problem, countedBudget(5000)).length).toBeGreaterThan(0)
  })
})
