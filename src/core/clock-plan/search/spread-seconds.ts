import type { DayProblem, Placed } from './day-problem.ts'

/** By how many seconds the lines of a day differ at most in what should be equal: age at baking, or minutes from oven to mouth. */
export function spreadSeconds(
  { tasks, equal }: Pick<DayProblem, 'tasks' | 'equal'>,
  begins: Placed,
  what: 'age' | 'oven',
): number {
  const active = new Map(tasks.map(({ id, activeSeconds }) => [id, activeSeconds]))
  const groups = equal.filter(({ name, spans }) => name.startsWith(what) && spans.length > 1)
  const spreads = groups.map(({ spans }) => {
    const lengths = spans.map(
      ({ from, to, fromEnd, lessSeconds = 0 }) =>
        (begins[to] ?? 0) -
        (begins[from] ?? 0) -
        (fromEnd ? (active.get(from) ?? 0) : 0) -
        lessSeconds,
    )
    return Math.max(...lengths) - Math.min(...lengths)
  })
  return Math.max(0, ...spreads)
}
