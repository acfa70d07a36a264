import type { RungOf } from './day-demands.ts'
import type { DayProblem, Placed } from './day-problem.ts'
import { type Decision, type Question, timesOf } from './decide.ts'
import { equalSpans } from './equal-ranges.ts'
import type { Hold, Nodes } from './holds.ts'
import type { Paths } from './longest-paths.ts'

/** What stays the same over all questions about one day. */
export interface DayOf {
  problem: DayProblem
  nodes: Nodes
  holds: Hold[]
  rungOf: RungOf
  base: Paths
  spreadRung: number | null
  /** Asks with so many nodes; the ways of choosing are tried in turn. */
  ask: (change: Partial<Question>, nodes: number) => Decision
  late: () => boolean
}

/** Where each task begins in a found plan. */
export function placedBy({ problem, nodes }: DayOf, paths: Paths): Placed {
  const times = timesOf(paths, problem.window.endFixed === true)
  return Object.fromEntries(
    problem.tasks.map(({ id }) => [id, times[nodes.ofTask.get(id) ?? 0] as number]),
  )
}

/** From the first task's begin to the last one's end. */
export function spanOf({ problem, nodes }: DayOf, paths: Paths): number {
  const times = timesOf(paths, problem.window.endFixed === true)
  const at = (id: string) => times[nodes.ofTask.get(id) ?? 0] as number
  const ends = problem.tasks.map(({ id, activeSeconds }) => at(id) + activeSeconds)
  return Math.max(...ends) - Math.min(...problem.tasks.map(({ id }) => at(id)))
}

/** The least rung within which the lines are equal: at least 1, and 0 where nothing is compared. */
export function spreadRungOf({ problem, nodes }: DayOf, paths: Paths): number {
  const times = timesOf(paths, problem.window.endFixed === true)
  const rungs = equalSpans(problem, nodes).map(({ spans, toleranceSeconds }) => {
    const ages = spans.map(
      ({ from, to, plus }) => (times[to] as number) - (times[from] as number) + plus,
    )
    const spread = Math.max(...ages) - Math.min(...ages)
    let rung = Math.max(1, Math.ceil((spread * 4) / Math.max(1, toleranceSeconds)))
    while (Math.floor((toleranceSeconds * rung) / 4) < spread) rung += 1
    return rung
  })
  return Math.max(0, ...rungs)
}
