import type { DayProblem } from './day-problem.ts'
import { type EqualRange, equalRanges, narrowed, splitOf } from './equal-ranges.ts'
import { beforeDemand, clash, type Hold, type Nodes } from './holds.ts'
import { demand, type Paths, roomFor } from './longest-paths.ts'

/** What is asked: is there a plan within these demands, this spread and this span? */
export interface Question {
  problem: DayProblem
  nodes: Nodes
  holds: readonly Hold[]
  /** The closed demands of the day; they are not changed. */
  base: Paths
  /** Quarters of tolerance by which the lines may differ; null for as they fall. */
  spreadRung: number | null
  spanSeconds: number | null
  /** Which of the overlapping holds to part first: the closest, the closest in both orders, the earliest. */
  choice: 0 | 1 | 2
}

export interface Limits {
  nodes: number
  stop: () => boolean
}

/** A plan with the orders it rests on, the proof that there is none, or no answer within the limits. */
export type Decision = { found: 'plan'; paths: Paths } | { found: 'none' } | { found: 'unknown' }

interface Demand {
  from: number
  to: number
  seconds: number
}

interface Parted {
  one: Demand
  other: Demand
  begin: Hold
  second: Hold
}

/**
 * Decides by depth-first search over the orders of what overlaps: the times of a node are the longest paths (soonest, or
 * latest where the day's end is fixed), so only demands x_to − x_from ≥ seconds are ever added. A resource of which two holds
 * take too much is an either-or; where more share it, some two of those that meet at a peak must part. Equal ages are sought
 * by halving the range in which all of them must lie. A “none” is a proof.
 */
export function decide(question: Question, limits: Limits): Decision {
  const { problem, nodes, holds, base } = question
  const pool: Int32Array[] = []
  let left = limits.nodes
  const late = problem.window.endFixed === true

  const root: Paths = { size: base.size, longest: base.longest.slice() }
  const { spanSeconds, spreadRung } = question
  if (spanSeconds !== null && !demand(root, nodes.dayEnd, nodes.dayBegin, -spanSeconds))
    return { found: 'none' }
  const ranges = spreadRung === null ? [] : equalRanges(problem, nodes, root, spreadRung)
  if (ranges === null) return { found: 'none' }
  for (const range of ranges) if (!narrowed(root, range)) return { found: 'none' }

  type Search = Decision['found']
  let plan: Paths | null = null
  const go = (
    paths: Paths,
    open: Parted[],
    equal: readonly EqualRange[],
    depth: number,
  ): Search => {
    left -= 1
    if (left < 0 || (left % 8 === 0 && limits.stop())) return 'unknown'
    const still = settled(paths, open)
    if (!still) return 'none'
    const times = timesOf(paths, late)
    const branches =
      partings(paths, still, times, question.choice) ??
      peaks(paths, question, times) ??
      ends(paths, question, times)
    if (branches) {
      return tryEach(branches.length, paths, depth, (at, next) => {
        const own = branches[at]
        if (!own || !demand(next, own.from, own.to, own.seconds)) return 'none'
        return go(next, still, equal, depth + 1)
      })
    }
    const split = splitOf(equal, times)
    if (split) {
      return tryEach(split.length, paths, depth, (at, next) => {
        const own = split[at]
        if (!own || !narrowed(next, own.range)) return 'none'
        return go(next, still, own.all, depth + 1)
      })
    }
    plan = { size: paths.size, longest: paths.longest.slice() }
    return 'plan'
  }

  const tryEach = (
    count: number,
    paths: Paths,
    depth: number,
    attempt: (at: number, next: Paths) => Search,
  ): Search => {
    let sure = true
    for (let at = 0; at < count; at += 1) {
      const own = pool[depth] ?? new Int32Array(paths.longest.length)
      pool[depth] = own
      own.set(paths.longest)
      const answer = attempt(at, { size: paths.size, longest: own })
      if (answer === 'plan') return answer
      if (answer === 'unknown') sure = false
      if (left < 0) return 'unknown'
    }
    return sure ? 'none' : 'unknown'
  }

  const answer = go(root, either(question, holds), ranges, 0)
  if (answer === 'plan' && plan) return { found: 'plan', paths: plan }
  return { found: answer === 'none' ? 'none' : 'unknown' }
}

/** When each node comes: as soon, or as late, as the demands allow. */
export function timesOf({ size, longest }: Paths, late: boolean): Int32Array {
  const times = new Int32Array(size)
  for (let node = 0; node < size; node += 1)
    times[node] = late ? -(longest[node * size] as number) : (longest[node] as number)
  return times
}

/** Every two holds of which only one can be at a time. */
function either({ problem }: Question, holds: readonly Hold[]): Parted[] {
  return holds.flatMap((begin, at) =>
    holds.slice(at + 1).flatMap((second) => {
      if (begin.resource !== second.resource || (begin.begin === 0 && second.begin === 0)) return []
      const most = problem.capacities[begin.resource] ?? 0
      if (begin.count + second.count <= most && !clash(begin, second)) return []
      const one = beforeDemand(begin, second, problem.oven)
      const other = beforeDemand(second, begin, problem.oven)
      return [{ one, other, begin, second }]
    }),
  )
}

/** Posts every order that is forced, until none is; the pairs that may still go either way, or null when one can go neither. */
function settled(paths: Paths, open: Parted[]): Parted[] | null {
  let pairs = open
  for (;;) {
    let posted = false
    const next: Parted[] = []
    for (const pair of pairs) {
      const { one, other } = pair
      if (isMet(paths, one) || isMet(paths, other)) continue
      const first = roomFor(paths, one) >= 0
      const second = roomFor(paths, other) >= 0
      if (first && second) next.push(pair)
      else {
        const forced = first ? one : other
        if (!(first || second) || !demand(paths, forced.from, forced.to, forced.seconds))
          return null
        posted = true
      }
    }
    pairs = next
    if (!posted) return pairs
  }
}

const isMet = ({ size, longest }: Paths, { from, to, seconds }: Demand) =>
  (longest[from * size + to] as number) >= seconds

/** The two orders of the pair to part next, the roomier first; null where nothing that excludes each other overlaps. */
function partings(
  paths: Paths,
  open: readonly Parted[],
  times: Int32Array,
  choice: Question['choice'],
): Demand[] | null {
  let best: Demand[] | null = null
  let least = Number.POSITIVE_INFINITY
  const at = (node: number) => times[node] as number
  for (const { one, other, begin, second } of open) {
    if (at(one.to) - at(one.from) >= one.seconds || at(other.to) - at(other.from) >= other.seconds)
      continue
    const first = roomFor(paths, one)
    const last = roomFor(paths, other)
    const room =
      choice === 0
        ? Math.max(first, last)
        : choice === 1
          ? Math.min(first, last)
          : Math.max(at(begin.begin) + begin.fromSeconds, at(second.begin) + second.fromSeconds)
    if (room >= least) continue
    least = room
    best = first >= last ? [one, other] : [other, one]
  }
  return best
}

/** All ways to part two of the holds that together take too much at some moment; null where no moment has too much. */
function peaks(paths: Paths, { problem, holds }: Question, times: Int32Array): Demand[] | null {
  const begins = (hold: Hold) => (times[hold.begin] as number) + hold.fromSeconds
  const ends = (hold: Hold) => (times[hold.end] as number) + hold.toSeconds
  for (const peak of holds) {
    const most = problem.capacities[peak.resource] ?? 0
    const moment = begins(peak)
    const on = holds.filter(
      (hold) => hold.resource === peak.resource && begins(hold) <= moment && moment < ends(hold),
    )
    const taken = on.reduce((total, { count }) => total + count, 0)
    if (taken <= most || on.every(({ begin }) => begin === 0)) continue
    return on
      .flatMap((one) =>
        on.flatMap((other) =>
          one === other || (one.begin === 0 && other.begin === 0)
            ? []
            : [beforeDemand(one, other, problem.oven)],
        ),
      )
      .filter((each) => roomFor(paths, each) >= 0)
      .toSorted((one, other) => roomFor(paths, other) - roomFor(paths, one))
  }
  return null
}

/** All tasks that could be the first of a day whose begin is fixed, or the last of one whose end is; null where one is. */
function ends(paths: Paths, { problem, nodes }: Question, times: Int32Array): Demand[] | null {
  const { startFixed, startSeconds, endFixed, endSeconds } = problem.window
  const own = problem.tasks.map(({ id, activeSeconds }) => ({
    node: nodes.ofTask.get(id) ?? 0,
    activeSeconds,
  }))
  const at = (node: number) => times[node] as number
  const begun = Math.min(...own.map(({ node }) => at(node)))
  if (startFixed && begun !== startSeconds)
    return own
      .map(({ node }) => ({ from: node, to: nodes.dayBegin, seconds: 0 }))
      .filter((each) => roomFor(paths, each) >= 0)
  const last = Math.max(...own.map(({ node, activeSeconds }) => at(node) + activeSeconds))
  if (endFixed && last !== endSeconds)
    return own
      .map(({ node, activeSeconds }) => ({ from: nodes.dayEnd, to: node, seconds: -activeSeconds }))
      .filter((each) => roomFor(paths, each) >= 0)
  return null
}
