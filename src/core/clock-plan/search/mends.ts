import type { RungOf } from './day-demands.ts'
import type { DayProblem } from './day-problem.ts'
import { type Budget, goes, mostRung } from './solve-day.ts'

/** One change that makes an impossible day possible, each alone. */
export type Mend =
  | { mend: 'later-end'; seconds: number }
  | { mend: 'one-more'; resource: string }
  | { mend: 'same-for-all'; step: string; seconds: number }
  | { mend: 'free-oven-order' }
  | { mend: 'wider-waits'; rung: number }

/** What of a day stands against each other: with any one of them left out the day goes. */
export type Culprit =
  | { what: 'resource'; resource: string }
  | { what: 'blocks' | 'window' | 'orders' | 'log' }

const dayOfSeconds = 86_400
const mostMinutes = 30
const widestRung = 400

/**
 * The smallest mend of each kind, in the order of the harm they do to the comparison: a later end, one more of a resource, the
 * same change of one wait for all lines (whole minutes), the oven's order free, the least rung of the waits above their
 * tolerance. A kind that does not help within its time, an equal share of the budget, is left out.
 */
export function mendsOf(problem: DayProblem, budget: Budget): Mend[] {
  const share = budget.milliseconds / 5
  const within = (milliseconds: number) => ({ clock: budget.clock, milliseconds })
  const full: RungOf = () => mostRung
  return [
    ...laterEnd(problem, within(share), full),
    ...oneMore(problem, within(share), full),
    ...sameForAll(problem, within(share), full),
    ...freeOrder(problem, within(share), full),
    ...widerWaits(problem, within(share)),
  ]
}

/** The least set of what collides, by leaving out one after another (deletion). */
export function culpritsOf(problem: DayProblem, budget: Budget): Culprit[] {
  const all: Culprit[] = [
    ...Object.keys(problem.capacities).map((resource) => ({ what: 'resource' as const, resource })),
    { what: 'blocks' },
    { what: 'window' },
    { what: 'orders' },
    { what: 'log' },
  ]
  const share = { clock: budget.clock, milliseconds: budget.milliseconds / all.length }
  let kept = all
  for (const one of all) {
    const without = kept.filter((other) => other !== one)
    if (goes(onlyWith(problem, without), share, () => mostRung) === false) kept = without
  }
  return kept
}

function onlyWith(problem: DayProblem, kept: readonly Culprit[]): DayProblem {
  const has = (what: Culprit['what'], resource?: string) =>
    kept.some((one) => one.what === what && (!('resource' in one) || one.resource === resource))
  const counts = Object.entries(problem.capacities)
  return {
    ...problem,
    capacities: Object.fromEntries(
      counts.map(([name, count]) => [name, has('resource', name) ? count : 1000]),
    ),
    blocks: has('blocks') ? problem.blocks : [],
    window: has('window') ? problem.window : { startSeconds: problem.window.startSeconds },
    orders: has('orders') ? problem.orders : [],
    ...(has('log') ? {} : { done: [], nowSeconds: null }),
  }
}

/** The least whole number from 1 to `most` at which it goes, if it goes at `most`. */
function least(most: number, goesAt: (count: number) => boolean): number | null {
  let high = 1
  while (high < most && !goesAt(high)) high = Math.min(most, high * 2)
  if (high === most && !goesAt(most)) return null
  let low = Math.floor(high / 2)
  while (low + 1 < high) {
    const middle = Math.floor((low + high) / 2)
    if (goesAt(middle)) high = middle
    else low = middle
  }
  return high
}

function laterEnd(problem: DayProblem, budget: Budget, full: RungOf): Mend[] {
  const { endSeconds } = problem.window
  if (endSeconds === undefined) return []
  const share = { ...budget, milliseconds: budget.milliseconds / 20 }
  const seconds = least(dayOfSeconds, (more) => {
    const window = { ...problem.window, endSeconds: endSeconds + more }
    return goes({ ...problem, window }, share, full) === true
  })
  return seconds === null ? [] : [{ mend: 'later-end', seconds }]
}

function oneMore(problem: DayProblem, budget: Budget, full: RungOf): Mend[] {
  const names = Object.keys(problem.capacities)
  const share = { ...budget, milliseconds: budget.milliseconds / Math.max(1, names.length) }
  return names.flatMap((resource): Mend[] => {
    const count = (problem.capacities[resource] ?? 0) + 1
    const capacities = { ...problem.capacities, [resource]: count }
    const helps = goes({ ...problem, capacities }, share, full) === true
    return helps ? [{ mend: 'one-more', resource }] : []
  })
}

/** Tries every step with a minute more and less, then two, and stops at the first that helps. */
function sameForAll(problem: DayProblem, budget: Budget, full: RungOf): Mend[] {
  const stepOf = new Map(problem.tasks.map(({ id, step }) => [id, step]))
  const steps = [...new Set(problem.waits.map(({ from }) => stepOf.get(from) ?? ''))]
  const until = budget.clock() + budget.milliseconds
  const share = { ...budget, milliseconds: budget.milliseconds / 20 }
  for (let minutes = 1; minutes <= mostMinutes; minutes += 1) {
    for (const seconds of [minutes * 60, -minutes * 60]) {
      for (const step of steps) {
        if (budget.clock() > until) return []
        const waits = problem.waits.map((wait) =>
          stepOf.get(wait.from) === step ? { ...wait, seconds: wait.seconds + seconds } : wait,
        )
        if (waits.some((wait) => wait.seconds < 0)) continue
        if (goes({ ...problem, waits }, share, full) === true)
          return [{ mend: 'same-for-all', step, seconds }]
      }
    }
  }
  return []
}

function freeOrder(problem: DayProblem, budget: Budget, full: RungOf): Mend[] {
  const orders = problem.orders.filter(({ ofOven }) => !ofOven)
  if (orders.length === problem.orders.length) return []
  return goes({ ...problem, orders }, budget, full) === true ? [{ mend: 'free-oven-order' }] : []
}

function widerWaits(problem: DayProblem, budget: Budget): Mend[] {
  const share = { ...budget, milliseconds: budget.milliseconds / 16 }
  const more = least(widestRung, (count) => goes(problem, share, () => mostRung + count) === true)
  return more === null ? [] : [{ mend: 'wider-waits', rung: mostRung + more }]
}
