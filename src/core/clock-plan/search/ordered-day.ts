import { allowance, type RungOf } from './day-demands.ts'
import type { DayProblem, Order, Placed } from './day-problem.ts'
import { equalSpans } from './equal-ranges.ts'
import { beforeDemand, clash, type Hold, holdsOf, nodeOf, nodesOf } from './holds.ts'

/** x_to − x_from lies between two bounds. Node 0 is the origin and stays where it is. */
export interface Bound {
  from: number
  to: number
  least: number
  most: number
}

/** A wait as it costs: nothing where it is as planned, the more the further off, in its own tolerance either way. */
export interface Cost {
  from: number
  to: number
  planned: number
  earlySeconds: number
  lateSeconds: number
}

/** A day with every order that a found plan rests on: what is left is to move times within them. */
export interface OrderedDay {
  ids: string[]
  /** When each node comes, the origin first. */
  times: number[]
  bounds: Bound[]
  costs: Cost[]
}

const far = 1_000_000_000

/**
 * The orders of a found plan as bounds: waits within their rungs, who comes before whom at each resource, the ages within the
 * range in which they were found, the day no longer than it was. What is fixed (the log, the day's first hand or its end)
 * stays where it is.
 */
export function orderedDay(problem: DayProblem, begins: Placed, rungOf: RungOf): OrderedDay {
  const nodes = nodesOf(problem)
  const ids = problem.tasks.map(({ id }) => id)
  const times = [0, ...ids.map((id) => begins[id] ?? 0)]
  const active = new Map(problem.tasks.map(({ id, activeSeconds }) => [id, activeSeconds]))
  const after = (id: string) => active.get(id) ?? 0
  const bounds: Bound[] = []
  const costs: Cost[] = []
  const noSooner = (from: number, to: number, least: number) =>
    bounds.push({ from, to, least, most: far })
  for (const wait of problem.waits) {
    const [from, to] = [nodeOf(nodes, wait.from), nodeOf(nodes, wait.to)]
    const planned = after(wait.from) + wait.seconds
    const { early, late } = allowance(wait, rungOf(wait))
    bounds.push({ from, to, least: planned - early, most: planned + late })
    costs.push({
      ...{ from, to, planned },
      earlySeconds: wait.earlySeconds,
      lateSeconds: wait.lateSeconds,
    })
  }
  for (const { from, to, fromBegin, seconds } of problem.orders)
    noSooner(nodeOf(nodes, from), nodeOf(nodes, to), (fromBegin ? 0 : after(from)) + seconds)
  for (const { spans, toleranceSeconds: _ } of equalSpans(problem, nodes)) {
    const ages = spans.map(({ from, to, plus }) => (times[to] ?? 0) - (times[from] ?? 0) + plus)
    const [least, most] = [Math.min(...ages), Math.max(...ages)]
    for (const { from, to, plus } of spans)
      bounds.push({ from, to, least: least - plus, most: most - plus })
  }
  const first = Math.min(...ids.map((id) => begins[id] ?? 0))
  const last = Math.max(...ids.map((id) => (begins[id] ?? 0) + after(id)))
  const done = new Set(problem.done.map(({ task }) => task))
  for (const id of ids) {
    const node = nodeOf(nodes, id)
    const at = begins[id] ?? 0
    const soonest = Math.max(first, done.has(id) ? first : (problem.nowSeconds ?? first))
    const fixed =
      done.has(id) ||
      (problem.window.startFixed === true && at === first) ||
      (problem.window.endFixed === true && at + after(id) === last)
    if (fixed) bounds.push({ from: 0, to: node, least: at, most: at })
    else bounds.push({ from: 0, to: node, least: soonest, most: last - after(id) })
  }
  bounds.push(...takenInTurn(problem, holdsOf(problem, nodes), times))
  return { ids, times, bounds, costs }
}

/** Of every two holds that do not meet in the plan though they could, which is first. */
function takenInTurn(
  problem: DayProblem,
  holds: readonly Hold[],
  times: readonly number[],
): Bound[] {
  const begin = (hold: Hold) => (times[hold.begin] ?? 0) + hold.fromSeconds
  const end = (hold: Hold) => (times[hold.end] ?? 0) + hold.toSeconds
  const bounds: Bound[] = []
  for (const [resource, most] of Object.entries(problem.capacities)) {
    const own = holds
      .filter((hold) => hold.resource === resource)
      .toSorted((one, other) => begin(one) - begin(other) || end(one) - end(other))
    own.forEach((one, at) => {
      for (const other of own.slice(at + 1)) {
        if (one.begin === 0 && other.begin === 0) continue
        if (end(one) > begin(other)) continue
        const { from, to, seconds } = beforeDemand(one, other, problem.oven)
        bounds.push({ from, to, least: seconds, most: far })
        // One at a time: whoever comes after that one comes after this one too.
        if (most === 1 && one.count === 1 && !clash(one, other)) break
      }
    })
  }
  return bounds
}

/** Who comes before whom at each resource in a plan, as orders that a day made anew may keep. */
export function ordersTaken(problem: DayProblem, begins: Placed): Order[] {
  const nodes = nodesOf(problem)
  const ids = problem.tasks.map(({ id }) => id)
  const times = [0, ...ids.map((id) => begins[id] ?? 0)]
  return takenInTurn(problem, holdsOf(problem, nodes), times).flatMap(({ from, to, least }) => {
    const [one, other] = [ids[from - 1], ids[to - 1]]
    return one && other ? [{ from: one, to: other, fromBegin: true, seconds: least }] : []
  })
}
