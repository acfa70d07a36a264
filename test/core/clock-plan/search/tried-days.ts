import { solveDay } from '@/core/clock-plan/search/solve-day.ts'
import { checkDay } from './check-day.ts'
import { countedBudget } from './counted-budget.ts'
import { randomDay } from './random-day.ts'

/** What came of some seeded days; `faults`: every way in which a plan does not hold what it promises, with its seed. */
export interface TriedDays {
  plans: number
  proved: number
  gaveUp: number
  faults: string[]
}

/** Solves the days of the seeds from one to another, both taken, and holds every plan to the checker. */
export function triedDays(first: number, last: number): TriedDays {
  const tried: TriedDays = { plans: 0, proved: 0, gaveUp: 0, faults: [] }
  for (let seed = first; seed <= last; seed += 1) {
    const problem = randomDay(seed)
    const handed: { spreadRung: number; spanSeconds: number }[] = []
    const solved = solveDay(problem, countedBudget(120), { better: (plan) => handed.push(plan) })
    if (!solved.ok) {
      tried.gaveUp += solved.reason === 'no-time' ? 1 : 0
      continue
    }
    const { begins, rung, spreadRung, spanSeconds, proved, boundSeconds } = solved.plan
    const found = checkDay(problem, begins)
    const holds: [string, boolean][] = [
      ['nothing collides and no wait breaks', found.faults.length === 0],
      ['its rung', found.rung <= rung],
      ['its spread', found.spreadRung === spreadRung],
      ['its span', found.spanSeconds === spanSeconds],
      ['its bound', boundSeconds <= spanSeconds && (!proved.span || boundSeconds === spanSeconds)],
      ['each plan handed on is no worse', handed.every(noWorse(handed))],
    ]
    for (const [what, is] of holds) if (!is) tried.faults.push(`day ${seed}: ${what}`)
    tried.plans += 1
    tried.proved += proved.rung && proved.spread && proved.span ? 1 : 0
  }
  return tried
}

const noWorse =
  (handed: readonly { spreadRung: number; spanSeconds: number }[]) =>
  ({ spreadRung, spanSeconds }: { spreadRung: number; spanSeconds: number }, at: number) => {
    const before = handed[at - 1]
    if (!before || spreadRung < before.spreadRung) return true
    return spreadRung === before.spreadRung && spanSeconds <= before.spanSeconds
  }
