import { ShiftNetwork } from './cheapest-shift.ts'
import type { RungOf } from './day-demands.ts'
import type { DayProblem, Placed } from './day-problem.ts'
import { type Cost, type OrderedDay, orderedDay } from './ordered-day.ts'

/** Parts what must not be parted: far above any sum of deviations. */
const never = 1e7

/**
 * The times of a found plan moved, within the orders that it rests on, until the waits are off by as little as can be, each
 * counted in its own tolerance. The sum is a convex function of differences, so that shifting a set of tasks by steps that
 * shrink from 1024 s to 1 s, always the set that gains most, ends at the least (steepest descent for L-natural convex
 * functions, from memory). Exact for the orders and for the range of ages that was found.
 */
export function leastDeviation(problem: DayProblem, begins: Placed, rungOf: RungOf): Placed {
  const day = orderedDay(problem, begins, rungOf)
  const times = [...day.times]
  for (let step = 1024; step >= 1; step /= 4) {
    for (let gained = true; gained; ) gained = [step, -step].some((by) => shift(day, times, by))
  }
  return Object.fromEntries(day.ids.map((id, at) => [id, times[at + 1] ?? 0]))
}

/** The sum of how far the waits are off, each in its own tolerance. */
export function deviationOf(problem: DayProblem, begins: Placed): number {
  const active = new Map(problem.tasks.map(({ id, activeSeconds }) => [id, activeSeconds]))
  return problem.waits.reduce((total, { from, to, seconds, earlySeconds, lateSeconds }) => {
    const planned = (active.get(from) ?? 0) + seconds
    const off = (begins[to] ?? 0) - (begins[from] ?? 0)
    return total + priceOf({ from: 0, to: 0, planned, earlySeconds, lateSeconds }, off)
  }, 0)
}

function priceOf({ planned, earlySeconds, lateSeconds }: Cost, difference: number): number {
  const off = difference - planned
  if (off === 0) return 0
  return Math.abs(off) / Math.max(1, off < 0 ? earlySeconds : lateSeconds)
}

/** Shifts the set of tasks that gains most by so many seconds; false where none gains. */
function shift({ bounds, costs }: OrderedDay, times: number[], by: number): boolean {
  const network = new ShiftNetwork(times.length)
  network.own(0, never)
  const difference = ({ from, to }: { from: number; to: number }) =>
    (times[to] ?? 0) - (times[from] ?? 0)
  for (const bound of bounds) {
    const now = difference(bound)
    if (now + by < bound.least || now + by > bound.most) network.pair(bound.to, bound.from, never)
    if (now - by < bound.least || now - by > bound.most) network.pair(bound.from, bound.to, never)
  }
  for (const cost of costs) {
    const now = difference(cost)
    const alone = priceOf(cost, now + by) - priceOf(cost, now)
    const without = priceOf(cost, now - by) - priceOf(cost, now)
    // Chosen `to` without `from` costs `alone`, the other way round `without`; both or none, nothing. Their sum is never below 0.
    network.own(cost.to, alone)
    network.own(cost.from, -alone)
    network.pair(cost.from, cost.to, alone + without)
  }
  const { price, chosen } = network.cheapest()
  if (price > -1e-6 || chosen.size === 0) return false
  for (const node of chosen) times[node] = (times[node] ?? 0) + by
  return true
}
