import { withoutQueue } from '@/core/clock-plan/first-times.ts'
import type { RungOf } from '@/core/clock-plan/search/day-demands.ts'
import type { DayProblem, Order, Placed } from '@/core/clock-plan/search/day-problem.ts'
import { laidInTurn } from '@/core/clock-plan/search/laid-in-turn.ts'
import { type DayPlan, goes, mostRung, solveDay } from '@/core/clock-plan/search/solve-day.ts'
import type { WorkPart } from '@/core/clock-plan/work-part.ts'

/** A day made anew: when its parts begin, and by how many quarters of tolerance waits are off and lines differ. */
export interface MadeAnew {
  begins: Placed
  rung: number
  spreadRung: number
  /** By how much more than they may waits out of the past end late, beyond what is lost already. */
  graceSeconds: number
  /** Nothing was found: each thing follows as soon as it can. */
  laid: boolean
}

/** Looks at a clock that counts them: the same day is made anew alike on every device, slow or quick. */
const looksOfSearch = 240
const looksOfQuestion = 30
/** So often a search that runs out of looks is tried with more grace. */
const mostTries = 3
/** Of more tasks each thing follows as soon as it can: a search would hold the entry's answer up too long. */
const mostSearched = 160
const graces = [0, 60, 180, 420, 900, 1800, 3600, 7200, 14_400, 28_800, 86_400]

/**
 * Makes what is left of a day anew. `problemAt` asks it with so much grace for waits out of the past: none where that goes,
 * else the least of a few. The orders of the day as it was planned stay, unless another order is better by more than a rung: a
 * plan that changes with every entry is none.
 */
export function solveAnew(
  problemAt: (graceSeconds: number) => DayProblem,
  ordersBefore: readonly Order[],
  parts: readonly WorkPart[],
): MadeAnew {
  const none = problemAt(0)
  if (none.tasks.length <= mostSearched) {
    let tries = mostTries
    for (const graceSeconds of graces) {
      const problem = problemAt(graceSeconds)
      const full: RungOf = () => mostRung
      const free = goes(problem, counted(looksOfQuestion), full)
      if (free === false) continue
      const kept = keeping(problem, ordersBefore)
      const before = solved(kept, looksOfSearch)
      const other = solved(problem, looksOfSearch)
      const best = calmer(before, other)
      if (best) return { ...picked(best), graceSeconds, laid: false }
      tries -= 1
      if (tries === 0) break
    }
  }
  const begins = laidInTurn(withoutQueue(none, [...parts]))
  return { begins, rung: 0, spreadRung: 0, graceSeconds: 0, laid: true }
}

const picked = ({ begins, rung, spreadRung }: DayPlan) => ({ begins, rung, spreadRung })

function calmer(before: DayPlan | null, other: DayPlan | null): DayPlan | null {
  if (!before || !other) return before ?? other
  const better = before.rung > other.rung + 1 || before.spreadRung > other.spreadRung + 1
  return better ? other : before
}

/** First with no wait cut short: what is left of a day is in no haste, but where nothing else makes it equal. */
function solved(problem: DayProblem, looks: number): DayPlan | null {
  const begun = new Set(problem.done.map(({ task }) => task))
  const extra: RungOf = ({ from }) => (begun.has(from) ? mostRung : 0)
  const calm = {
    ...problem,
    waits: problem.waits.map((wait) => ({ ...wait, earlySeconds: 0 })),
  }
  const found = solveDay(calm, counted(looks), { extra, most: 2 })
  if (found.ok && found.plan.spreadRung <= mostRung) return found.plan
  const hasty = solveDay(problem, counted(looks), { extra })
  return hasty.ok ? hasty.plan : found.ok ? found.plan : null
}

/** The problem with the orders of an earlier plan among what is not begun yet. */
function keeping(problem: DayProblem, orders: readonly Order[]): DayProblem {
  const begun = new Set(problem.done.map(({ task }) => task))
  const open = new Set(problem.tasks.flatMap(({ id }) => (begun.has(id) ? [] : [id])))
  const kept = orders.filter(({ from, to }) => open.has(from) && open.has(to))
  return { ...problem, orders: [...problem.orders, ...kept] }
}

function counted(milliseconds: number) {
  let looked = 0
  const clock = () => {
    looked += 1
    return looked
  }
  return { clock, milliseconds }
}
