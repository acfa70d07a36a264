import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import type { DayProblem } from '@/core/clock-plan/search/day-problem.ts'
import { solveDay } from '@/core/clock-plan/search/solve-day.ts'
import { checkDay } from '../core/clock-plan/search/check-day.ts'
import { countedBudget } from '../core/clock-plan/search/counted-budget.ts'

interface MiddleDay {
  name: string
  day: DayProblem
  proved: { rung: number; spreadRung: number; spanSeconds: number }
}

const file = new URL('./reference/middle-days.json', import.meta.url)
const days: MiddleDay[] = JSON.parse(readFileSync(file, 'utf8'))

/** Least rung, spread and span by HiGHS 1.12, a mixed-integer program of its own: `middle-days.py` beside this file made the table. */
it.each(days)('$name: as short and as equal as another solver proves', ({ day, proved }) => {
  const solved = solveDay(day, countedBudget(1_000_000))
  if (!solved.ok) throw new Error(solved.reason)
  const { rung, spreadRung, spanSeconds, proved: sure } = solved.plan
  expect({ rung, spreadRung, spanSeconds }).toEqual(proved)
  expect(sure).toEqual({ rung: true, spread: true, span: true })
  expect(checkDay(day, solved.plan.begins).faults).toEqual([])
})
