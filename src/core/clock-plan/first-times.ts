import { dayAsks } from './day-key.ts'
import { taskKey } from './day-tasks.ts'
import type { DayAsked } from './problem-of-day.ts'
import type { DayProblem, Placed } from './search/day-problem.ts'
import { laidInTurn } from './search/laid-in-turn.ts'
import { type DayPlan, mostRung, solveDay } from './search/solve-day.ts'
import { straightened } from './straightened.ts'

/** Looks at the clock that the quick search gets: some hundred nodes, so that it answers the same on every machine. */
const looks = 60

/**
 * Of more tasks the first plan is laid without a search, which would hold a frame: on a day of twelve doughs a quarter of a second, for
 * the same riders and a span within a hundredth.
 */
const mostSearched = 100

/** Days asked for again and again, from key to key of one plan, are worked out once. */
const mostKnown = 24
const known = new Map<string, readonly number[]>()

/**
 * The quick first plan of a day, counted from its first hand: what the search finds within few steps, else, and for the
 * largest days, the tasks laid one after another. The same day always gets the same plan.
 */
export function firstTimes({ problem, parts, rough }: DayAsked): Placed {
  const asks = dayAsks(problem)
  const begins = known.get(asks) ?? worked(problem, parts, roughBegins(parts, rough))
  known.delete(asks)
  known.set(asks, begins)
  const [oldest] = known.keys()
  if (known.size > mostKnown && oldest !== undefined) known.delete(oldest)
  return Object.fromEntries(problem.tasks.map(({ id }, at) => [id, begins[at] ?? 0]))
}

function worked(
  problem: DayProblem,
  parts: DayAsked['parts'],
  notBefore: Placed,
): readonly number[] {
  const found =
    problem.tasks.length > mostSearched
      ? null
      : (searched(withoutHaste(problem), 1) ?? searched(problem, mostRung))
  const begins = found
    ? straightened(found.problem, parts, found.plan.begins, () => found.plan.rung)
    : laidInTurn(withoutQueue(problem, parts), notBefore)
  return problem.tasks.map(({ id }) => begins[id] ?? 0)
}

/** When each part would begin if only the oven were kept apart. */
function roughBegins(parts: DayAsked['parts'], { tasks }: DayAsked['rough']): Placed {
  const begins = new Map(tasks.map((task) => [taskKey(task), task.beginSeconds]))
  return Object.fromEntries(
    parts.map(({ id, taskKeys }) => [id, begins.get(taskKeys[0] ?? '') ?? 0]),
  )
}

/** The same day with the oven's queue left to the oven: where ages cannot be equal, nobody waits for the others. */
export function withoutQueue(problem: DayProblem, parts: DayAsked['parts']): DayProblem {
  const queued = new Map(
    parts.flatMap(({ id, after }) =>
      after.map((each) => [`${each.from} ${id}`, each.queuedSeconds] as const),
    ),
  )
  const waits = problem.waits.map((wait) => ({
    ...wait,
    seconds: wait.seconds - (queued.get(`${wait.from} ${wait.to}`) ?? 0),
  }))
  return { ...problem, waits }
}

/** The same day with no wait cut short: a first plan is in no haste. */
function withoutHaste(problem: DayProblem): DayProblem {
  return { ...problem, waits: problem.waits.map((wait) => ({ ...wait, earlySeconds: 0 })) }
}

function searched(
  problem: DayProblem,
  most: number,
): { problem: DayProblem; plan: DayPlan } | null {
  let looked = 0
  const clock = () => {
    looked += 1
    return looked
  }
  const solved = solveDay(problem, { clock, milliseconds: looks }, { most })
  return solved.ok ? { problem, plan: solved.plan } : null
}
