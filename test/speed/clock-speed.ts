import { performance } from 'node:perf_hooks'
import type { DayProblem } from '@/core/clock-plan/search/day-problem.ts'
import { solveDay } from '@/core/clock-plan/search/solve-day.ts'
import { madeDay } from '../core/clock-plan/search/made-day.ts'
import { triedDays } from '../core/clock-plan/search/tried-days.ts'

type Say = (what: string, value: number, unit?: string) => void

const days = 15
const mostMilliseconds = 1000

/** Doughs and steps of a day; the first three are those a baker is promised an answer for, the others show how it grows. */
const sizes = [
  [3, 8],
  [5, 12],
  [8, 16],
  [2, 8],
  [4, 8],
  [6, 8],
  [8, 8],
  [4, 12],
  [4, 16],
] as const

/**
 * Measures how long the best plan of a made-up day is sought, a second at the most, by the size of the day; and until the first
 * plan stands. Median over days of different seeds.
 */
export function measureClock(say: Say): void {
  triedDays(1, 10)
  for (const [doughs, steps] of sizes) {
    const all = Array.from({ length: days }, (_, seed) => timed(madeDay(doughs, steps, seed + 1)))
    const name = `${doughs} doughs x ${steps} steps`
    const middle = (values: readonly number[]) =>
      values.toSorted((one, other) => one - other)[Math.floor(values.length / 2)] ?? 0
    say(`the first plan of a day, ${name}`, middle(all.map(({ first }) => first)))
    say(`the best plan of a day, ${name}`, middle(all.map(({ best }) => best)))
    say(`  of which proved best, ${name}`, all.filter(({ proved }) => proved).length, `/${days}`)
  }
}

/** Tries 3,000 seeded days of every kind against the checker and prints what came of them. */
export function measureDays(say: Say): void {
  const { plans, proved, gaveUp, faults } = triedDays(1, 3000)
  say('seeded days tried', 3000, '')
  say('of them planned', plans, '')
  say('of them proved best', proved, '')
  say('ran out of looks', gaveUp, '')
  say('plans that break what they promise', faults.length, '')
  for (const fault of faults) process.stdout.write(`${fault}\n`)
}

function timed(problem: DayProblem): { first: number; best: number; proved: boolean } {
  const from = performance.now()
  let first = mostMilliseconds
  const budget = { clock: () => performance.now(), milliseconds: mostMilliseconds }
  const solved = solveDay(problem, budget, {
    better: () => {
      first = Math.min(first, performance.now() - from)
    },
  })
  const { proved } = solved.ok ? solved.plan : { proved: null }
  return {
    ...{ first, best: performance.now() - from },
    proved: proved?.rung === true && proved.spread && proved.span,
  }
}
