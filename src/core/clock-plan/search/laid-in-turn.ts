import type { DayProblem, Placed, TaskToPlace } from './day-problem.ts'

interface Taken {
  resource: string
  count: number
  fromSeconds: number
  toSeconds: number
  celsius?: number | undefined
}

/**
 * A plan without a search, which always exists where time is free: the tasks one after another, those first that are ready
 * first, each as soon as what comes before it is done and waited for and nothing collides. No wait is ever shorter than
 * planned; it may be longer than its tolerance. `notBefore` holds back what would come too soon to meet the others. What holds the oven or the fridge holds it for its planned wait at least.
 */
export function laidInTurn(problem: DayProblem, notBefore: Placed = {}): Placed {
  const { tasks, waits, orders, window } = problem
  const active = new Map(tasks.map(({ id, activeSeconds }) => [id, activeSeconds]))
  const fixed = new Map(problem.done.map(({ task, atSeconds }) => [task, atSeconds]))
  const begins: Placed = {}
  const taken: Taken[] = problem.blocks.map((block) => ({ ...block }))
  const endOf = (id: string) => (begins[id] ?? 0) + (active.get(id) ?? 0)
  const before = new Map(tasks.map(({ id }) => [id, [] as { from: string; at: () => number }[]]))
  for (const { from, to, seconds } of waits)
    before.get(to)?.push({ from, at: () => endOf(from) + seconds })
  // What only bounds from above (a time below zero) cannot hold a task back.
  for (const { from, to, seconds, fromBegin } of orders.filter((order) => order.seconds >= 0))
    before
      .get(to)
      ?.push({ from, at: () => (fromBegin ? (begins[from] ?? 0) : endOf(from)) + seconds })
  const open = new Set(tasks)
  const soonest = ({ id }: TaskToPlace) =>
    Math.max(
      notBefore[id] ?? 0,
      window.startSeconds,
      problem.nowSeconds ?? 0,
      ...(before.get(id) ?? []).map(({ at }) => at()),
    )
  while (open.size > 0) {
    const ready = [...open].filter(({ id }) =>
      (before.get(id) ?? []).every(({ from }) => from in begins),
    )
    const [first = [...open][0]] = ready.toSorted((one, other) => soonest(one) - soonest(other))
    if (!first) break
    const block = blockOf(problem, first)
    const at = fixed.get(first.id) ?? firstFree(problem, block, soonest(first), taken)
    for (const { task, offsetSeconds } of block) {
      begins[task.id] = fixed.get(task.id) ?? at + offsetSeconds
      open.delete(task)
    }
    taken.push(...holdsOf(problem, block, at))
  }
  return begins
}

/** A task with those that follow it at their planned waits: from a launch to its pull, so that the hands are there in time. */
type Block = { task: TaskToPlace; offsetSeconds: number }[]

function blockOf({ tasks, waits, stays }: DayProblem, first: TaskToPlace): Block {
  const stay = stays.find(({ from, resource }) => from === first.id && resource === 'oven')
  const block: Block = [{ task: first, offsetSeconds: 0 }]
  if (!stay) return block
  for (let last = block[0]; last && last.task.id !== stay.to; last = block.at(-1)) {
    const { task, offsetSeconds } = last
    const wait = waits.find(({ from }) => from === task.id)
    const next = tasks.find(({ id }) => id === wait?.to)
    if (!wait || !next) return [{ task: first, offsetSeconds: 0 }]
    block.push({ task: next, offsetSeconds: offsetSeconds + task.activeSeconds + wait.seconds })
  }
  return block
}

function holdsOf(problem: DayProblem, block: Block, at: number): Taken[] {
  return block.flatMap(({ task, offsetSeconds }) => {
    const begin = at + offsetSeconds
    const end = begin + task.activeSeconds
    const own = task.uses.map(({ resource, count }) => ({
      ...{ resource, count, fromSeconds: begin, toSeconds: end },
    }))
    const held = problem.stays
      .filter(({ from }) => from === task.id)
      .map((stay) => ({
        ...{
          resource: stay.resource,
          count: stay.count,
          fromSeconds: begin,
          celsius: stay.celsius,
        },
        toSeconds:
          end + Math.max(0, stayedSeconds(problem, stay.from, stay.to)) + stay.afterSeconds,
      }))
    return [...own, ...held]
  })
}

/** From the end of one task to the end of a later one of its line, by the waits and hands between them; −∞ where it is on no such line. */
function stayedSeconds(problem: DayProblem, from: string, to: string): number {
  if (from === to) return 0
  const ways = problem.waits.flatMap((wait) => {
    if (wait.from !== from) return []
    const next = problem.tasks.find(({ id }) => id === wait.to)
    return [wait.seconds + (next?.activeSeconds ?? 0) + stayedSeconds(problem, wait.to, to)]
  })
  return Math.max(Number.NEGATIVE_INFINITY, ...ways)
}

/** The first moment from `soonest` on at which a block and what it begins to hold find room. */
function firstFree(
  problem: DayProblem,
  block: Block,
  soonest: number,
  taken: readonly Taken[],
): number {
  const wanted = (at: number) => holdsOf(problem, block, at)
  // What is over, and long enough ago for any change of the oven, collides with nothing from `soonest` on.
  const slowest = mostChange(problem)
  const still = taken.filter(({ toSeconds }) => toSeconds + slowest > soonest)
  const moments = [
    soonest,
    ...still.flatMap((one) =>
      block.flatMap(({ task, offsetSeconds }) => [
        one.toSeconds - offsetSeconds,
        one.toSeconds + changeOf(problem, task, one) - offsetSeconds,
      ]),
    ),
  ]
  const candidates = moments.filter((at) => at >= soonest).toSorted((one, other) => one - other)
  return candidates.find((at) => wanted(at).every((own) => fits(problem, own, still))) ?? soonest
}

/** The longest change of the oven that any two of the day's bakes could ask for. */
function mostChange({ stays, oven }: DayProblem): number {
  const celsius = stays.flatMap((stay) => (stay.celsius === undefined ? [] : [stay.celsius]))
  if (celsius.length === 0) return 0
  const [least, most] = [Math.min(...celsius), Math.max(...celsius)]
  return Math.max(secondsBetween(least, most, oven), secondsBetween(most, least, oven))
}

function changeOf({ stays, oven }: DayProblem, task: TaskToPlace, { celsius }: Taken): number {
  const own = stays.find(({ from }) => from === task.id)?.celsius
  return secondsBetween(celsius, own, oven)
}

function fits({ capacities, oven }: DayProblem, own: Taken, taken: readonly Taken[]): boolean {
  if (own.fromSeconds === own.toSeconds) return true
  const others = taken.filter(({ resource }) => resource === own.resource)
  const meets = (other: Taken, from: number, to: number) =>
    other.fromSeconds < to && from < other.toSeconds
  const apart = others.every(
    (other) =>
      other.celsius === undefined ||
      own.celsius === undefined ||
      other.celsius === own.celsius ||
      own.fromSeconds >= other.toSeconds + secondsBetween(other.celsius, own.celsius, oven) ||
      other.fromSeconds >= own.toSeconds + secondsBetween(own.celsius, other.celsius, oven),
  )
  if (!apart) return false
  const most = capacities[own.resource] ?? 0
  const moments = [own.fromSeconds, ...others.map(({ fromSeconds }) => fromSeconds)]
  return moments
    .filter((at) => at >= own.fromSeconds && at < own.toSeconds)
    .every(
      (at) =>
        own.count +
          others
            .filter((other) => meets(other, at, at + 1))
            .reduce((sum, { count }) => sum + count, 0) <=
        most,
    )
}

function secondsBetween(
  from: number | undefined,
  to: number | undefined,
  oven: DayProblem['oven'],
): number {
  if (from === undefined || to === undefined || from === to) return 0
  const kelvin = to - from
  return Math.ceil(
    kelvin > 0 ? kelvin * oven.heatSecondsPerKelvin : -kelvin * oven.coolSecondsPerKelvin,
  )
}
