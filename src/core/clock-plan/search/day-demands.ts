import type { DayProblem, Wait } from './day-problem.ts'
import { type Nodes, nodeOf } from './holds.ts'
import { close, emptyPaths, note, type Paths } from './longest-paths.ts'

/** How far a wait may be off, in quarters of its tolerance. */
export type RungOf = (wait: Wait) => number

/** A wait may be off by this many quarters of its tolerance, in whole seconds: early and late. */
export function allowance(wait: Wait, rung: number): { early: number; late: number } {
  const quarters = Math.min(rung, wait.mostRung ?? rung)
  return {
    early: Math.min(wait.seconds, Math.floor((wait.earlySeconds * quarters) / 4)),
    late: Math.floor((wait.lateSeconds * quarters) / 4),
  }
}

/**
 * The day's demands as a closed matrix, all but those of resources: waits within their rungs, the dealt orders, the window, the
 * log. Null where no times fit them.
 */
export function dayDemands(problem: DayProblem, nodes: Nodes, rungOf: RungOf): Paths | null {
  const paths = emptyPaths(nodes.size)
  const { origin, dayBegin, dayEnd } = nodes
  const active = new Map(problem.tasks.map(({ id, activeSeconds }) => [id, activeSeconds]))
  const done = new Set(problem.done.map(({ task }) => task))
  const { window, nowSeconds } = problem
  const logged = problem.done.map(({ atSeconds }) => atSeconds)
  const startSeconds = Math.min(window.startSeconds, ...logged)
  for (const { id, activeSeconds } of problem.tasks) {
    const node = nodeOf(nodes, id)
    note(paths, origin, node, startSeconds)
    note(paths, dayBegin, node, 0)
    note(paths, node, dayEnd, activeSeconds)
    if (nowSeconds !== null && !done.has(id)) note(paths, origin, node, nowSeconds)
  }
  for (const { task, atSeconds } of problem.done) {
    note(paths, origin, nodeOf(nodes, task), atSeconds)
    note(paths, nodeOf(nodes, task), origin, -atSeconds)
  }
  for (const wait of problem.waits) {
    const [from, to] = [nodeOf(nodes, wait.from), nodeOf(nodes, wait.to)]
    const { early, late } = allowance(wait, rungOf(wait))
    const after = active.get(wait.from) ?? 0
    note(paths, from, to, after + wait.seconds - early)
    note(paths, to, from, -(after + wait.seconds + late))
  }
  for (const { from, to, fromBegin, seconds } of problem.orders) {
    const after = fromBegin ? 0 : (active.get(from) ?? 0)
    note(paths, nodeOf(nodes, from), nodeOf(nodes, to), after + seconds)
  }
  note(paths, origin, dayBegin, startSeconds)
  if (window.startFixed) note(paths, dayBegin, origin, -window.startSeconds)
  if (window.endSeconds !== undefined) {
    note(paths, dayEnd, origin, -window.endSeconds)
    if (window.endFixed) note(paths, origin, dayEnd, window.endSeconds)
  }
  return close(paths) ? paths : null
}
