import type { RungOf } from './day-demands.ts'
import type { DayProblem } from './day-problem.ts'
import type { Mend, MomentMend } from './mend.ts'
import { type Budget, goes, mostRung } from './solve-day.ts'

/** What of a day stands against each other: with any one of them left out the day goes. */
export type Culprit =
  | { what: 'resource'; resource: string }
  | { what: 'blocks' | 'window' | 'orders' | 'log' }

/** How far off another moment is looked for, later and earlier, and how finely: steps, then seconds within the first that goes. */
const mostLaterSeconds = 86_400
const mostEarlierSeconds = 43_200
const stepSeconds = 900

const mostMinutes = 30
const atMost: RungOf = () => mostRung
const widestRung = 400

/**
 * The smallest mend of each kind, in the order of the harm they do to the comparison: another end or begin, one more of a
 * resource, the same change of one wait for all lines (whole minutes), the oven's order free, the least rung of the waits above
 * their tolerance. A kind that does not help within its time is left out: another moment has two thirds of the budget, each other kind
 * a twelfth.
 */
export function mendsOf(problem: DayProblem, budget: Budget): Mend[] {
  const share = budget.milliseconds / 12
  const within = (milliseconds: number) => ({ clock: budget.clock, milliseconds })
  return [
    ...otherMoment(problem, within(share * 8)),
    ...oneMore(problem, within(share)),
    ...sameForAll(problem, within(share)),
    ...freeOrder(problem, within(share)),
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
    if (goes(onlyWith(problem, without), share, atMost) === false) kept = without
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

/**
 * The nearest other moment at which a day goes whose end or begin is fixed, as a list of one; empty where none was found within
 * the budget. Steps of a quarter of an hour are tried outwards, later before earlier, then the seconds within the first that
 * goes. Each try has a counted number of looks, so that whoever asks of the same day is told the same.
 */
export function otherMoment(problem: DayProblem, budget: Budget): MomentMend[] {
  const { startSeconds, startFixed, endSeconds } = problem.window
  // Without hours that are taken one begin is like another.
  if (endSeconds === undefined && !(startFixed && problem.blocks.length > 0)) return []
  const until = budget.clock() + budget.milliseconds
  const goesBy = (by: number) => {
    const window =
      endSeconds === undefined
        ? { ...problem.window, startSeconds: startSeconds + by }
        : { ...problem.window, endSeconds: endSeconds + by }
    return goes({ ...problem, window }, counted(), atMost) === true
  }
  const what = endSeconds === undefined ? 'start' : 'end'
  const ways = [
    { way: 'later', sign: 1, most: mostLaterSeconds },
    { way: 'earlier', sign: -1, most: mostEarlierSeconds },
  ] as const
  for (let far = stepSeconds; far <= mostLaterSeconds; far += stepSeconds) {
    for (const { way, sign, most } of ways) {
      if (budget.clock() > until) return []
      if (far > most || !goesBy(sign * far)) continue
      const before = far - stepSeconds
      const more = least(stepSeconds, (seconds) => goesBy(sign * (before + seconds)))
      return [{ mend: `${way}-${what}`, seconds: before + (more ?? stepSeconds) }]
    }
  }
  return []
}

/** Looks at a clock that counts them. */
const looksOfTry = 60

function counted(): Budget {
  let looked = 0
  const clock = () => {
    looked += 1
    return looked
  }
  return { clock, milliseconds: looksOfTry }
}

function oneMore(problem: DayProblem, budget: Budget): Mend[] {
  const names = Object.keys(problem.capacities)
  const share = { ...budget, milliseconds: budget.milliseconds / Math.max(1, names.length) }
  return names.flatMap((resource): Mend[] => {
    const count = (problem.capacities[resource] ?? 0) + 1
    const capacities = { ...problem.capacities, [resource]: count }
    const helps = goes({ ...problem, capacities }, share, atMost) === true
    return helps ? [{ mend: 'one-more', resource }] : []
  })
}

/** Tries every step but the bake with a minute more and less, then two, and stops at the first that helps. */
function sameForAll(problem: DayProblem, budget: Budget): Mend[] {
  const stepOf = new Map(problem.tasks.map(({ id, step }) => [id, step]))
  const bent = problem.waits.filter(({ mostRung: most }) => most === undefined)
  const steps = [...new Set(bent.map(({ from }) => stepOf.get(from) ?? ''))]
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
        if (goes({ ...problem, waits }, share, atMost) === true)
          return [{ mend: 'same-for-all', step, seconds }]
      }
    }
  }
  return []
}

function freeOrder(problem: DayProblem, budget: Budget): Mend[] {
  const orders = problem.orders.filter(({ ofOven }) => !ofOven)
  if (orders.length === problem.orders.length) return []
  return goes({ ...problem, orders }, budget, atMost) === true ? [{ mend: 'free-oven-order' }] : []
}

function widerWaits(problem: DayProblem, budget: Budget): Mend[] {
  const rung = leastRung(problem, budget)
  return rung === null ? [] : [{ mend: 'wider-waits', rung }]
}

/** The least rung above the tolerance at which a day goes; null where none was found. */
export function leastRung(problem: DayProblem, budget: Budget): number | null {
  const share = { ...budget, milliseconds: budget.milliseconds / 16 }
  const more = least(widestRung, (count) => goes(problem, share, () => mostRung + count) === true)
  return more === null ? null : mostRung + more
}
