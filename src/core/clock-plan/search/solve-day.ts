import { dayDemands, type RungOf } from './day-demands.ts'
import { type DayOf, placedBy, spanOf, spreadRungOf } from './day-of.ts'
import type { DayProblem, Placed } from './day-problem.ts'
import { type Decision, decide, type Question } from './decide.ts'
import { holdsOf, nodesOf } from './holds.ts'
import { leastSpan } from './least-span.ts'
import type { Paths } from './longest-paths.ts'

/** The most a wait may be off: all of its tolerance. */
export const mostRung = 4

/** How long the search may take: a clock in milliseconds, and when by it to stop. */
export interface Budget {
  clock: () => number
  milliseconds: number
}

export interface DayPlan {
  begins: Placed
  /** Quarters of tolerance: by which the waits are off at most, and by which the lines differ at most. */
  rung: number
  spreadRung: number
  spanSeconds: number
  /** True where it is proved that nothing better exists; the span also has the least that is not ruled out. */
  proved: { rung: boolean; spread: boolean; span: boolean }
  boundSeconds: number
}

export type DaySolution =
  | { ok: true; plan: DayPlan }
  | { ok: false; reason: 'nothing-fits' | 'no-time' }

/** Handed every plan as it is found, the first at once and each better than the last. */
export type Better = (plan: DayPlan) => void

/**
 * The best plan of a day: the least rung of the waits, then the least rung by which the lines differ, then the shortest day.
 * Exact where `proved`; a search that runs out of time answers the best it found and the bound that holds. `rungOf` may allow
 * some waits more than the common rung, as after the past has gone wrong. Method: longest paths over difference constraints
 * with a depth-first search over orders; worked out and proved on made days for this project.
 */
export function solveDay(
  problem: DayProblem,
  budget: Budget,
  {
    better = () => {},
    most = mostRung,
    extra = () => 0,
    spread = true,
  }: {
    better?: Better
    most?: number
    extra?: RungOf
    spread?: boolean
  } = {},
): DaySolution {
  const until = budget.clock() + budget.milliseconds
  const stop = () => budget.clock() > until
  const at = (rung: number) => dayAt(problem, (wait) => Math.max(rung, extra(wait)), stop)
  const open: { rung: number; day: DayOf }[] = []
  let found: { rung: number; day: DayOf; paths: Paths } | null = null
  for (let rung = 1; rung <= most && !found; rung += 1) {
    const day = at(rung)
    const answer = day && quick(day)
    if (day && answer?.found === 'plan') found = { rung, day, paths: answer.paths }
    else if (day && answer?.found === 'unknown') open.push({ rung, day })
  }
  let proved = true
  for (const { rung, day } of open) {
    const answer = found ? patient(day, budget) : firstOf(day)
    if (answer.found === 'unknown') proved = false
    if (answer.found !== 'plan') continue
    found = { rung, day, paths: answer.paths }
    break
  }
  if (!found) return { ok: false, reason: proved ? 'nothing-fits' : 'no-time' }
  const { rung, day, paths } = found
  return improved(day, paths, { rung, proved, better, spread })
}

/** True, false or not known: does the day go with all waits within a rung? */
export function goes(problem: DayProblem, budget: Budget, rungOf: RungOf): boolean | null {
  const until = budget.clock() + budget.milliseconds
  const day = dayAt(problem, rungOf, () => budget.clock() > until)
  if (!day) return false
  const { found } = firstOf(day)
  return found === 'unknown' ? null : found === 'plan'
}

function dayAt(problem: DayProblem, rungOf: RungOf, late: () => boolean): DayOf | null {
  const nodes = nodesOf(problem)
  const base = dayDemands(problem, nodes, rungOf)
  if (!base) return null
  const holds = holdsOf(problem, nodes)
  const fixed = { problem, nodes, holds, base, spreadRung: null, spanSeconds: null }
  const ask = (change: Partial<Question>, count: number) =>
    decide({ ...fixed, choice: 0, ...change }, { nodes: count, stop: late })
  return { problem, nodes, holds, rungOf, base, spreadRung: null, ask, late }
}

const fewNodes = 400

function quick(day: DayOf): Decision {
  let answer: Decision = { found: 'unknown' }
  for (const choice of [0, 1, 2] as const) {
    answer = day.ask({ choice }, fewNodes)
    if (answer.found !== 'unknown') break
  }
  return answer
}

/** Where a plan is known already, a third of the time at most for a lower rung. */
function patient(day: DayOf, budget: Budget): Decision {
  const until = budget.clock() + budget.milliseconds / 3
  return firstOf({ ...day, late: () => day.late() || budget.clock() > until })
}

/** Few nodes in each way of choosing, then more, until an answer or the end of the time. */
export function firstOf(day: DayOf, change: Partial<Question> = {}): Decision {
  for (let count = 300; ; count *= 4) {
    for (const choice of [0, 1, 2] as const) {
      const answer = day.ask({ ...change, choice }, count)
      if (answer.found !== 'unknown') return answer
      if (day.late()) return answer
    }
  }
}

interface Found {
  rung: number
  proved: boolean
  better: Better
  spread: boolean
}

function improved(day: DayOf, first: Paths, { rung, proved, better, spread }: Found): DaySolution {
  const { nodes, base } = day
  const bound = base.longest[nodes.dayBegin * nodes.size + nodes.dayEnd] as number
  const made = (paths: Paths, sure: DayPlan['proved'], boundSeconds: number): DayPlan => ({
    ...{ begins: placedBy(day, paths), rung, spreadRung: spreadRungOf(day, paths) },
    ...{ spanSeconds: spanOf(day, paths), proved: sure, boundSeconds },
  })
  let sure = { rung: proved, spread: false, span: false }
  let best = made(first, sure, bound)
  let paths = first
  better(best)
  if (spread) {
    let least = true
    for (let wanted = 1; wanted < best.spreadRung; wanted += 1) {
      const answer = firstOf(day, { spreadRung: wanted })
      if (answer.found === 'unknown') least = false
      if (answer.found !== 'plan') continue
      paths = answer.paths
      break
    }
    sure = { ...sure, spread: least }
    best = made(paths, sure, bound)
    better(best)
  }
  const spreadRung = spread && best.spreadRung > 0 ? best.spreadRung : null
  const shortest = leastSpan({ ...day, spreadRung }, paths, (found, boundSeconds) =>
    better(made(found, sure, boundSeconds)),
  )
  sure = { ...sure, span: shortest.proved }
  return { ok: true, plan: made(shortest.paths, sure, shortest.boundSeconds) }
}
