import type { DayProblem } from './day-problem.ts'

/** What takes units of a resource from one moment to another: [x_begin + fromSeconds, x_end + toSeconds). */
export interface Hold {
  resource: string
  count: number
  begin: number
  fromSeconds: number
  end: number
  toSeconds: number
  celsius: number | undefined
}

/** The nodes of a problem: the origin, the tasks in their order, the day's begin and its end. */
export interface Nodes {
  origin: 0
  ofTask: ReadonlyMap<string, number>
  dayBegin: number
  dayEnd: number
  size: number
}

export function nodesOf({ tasks }: DayProblem): Nodes {
  return {
    origin: 0,
    ofTask: new Map(tasks.map(({ id }, at) => [id, at + 1])),
    dayBegin: tasks.length + 1,
    dayEnd: tasks.length + 2,
    size: tasks.length + 3,
  }
}

/** Everything that takes a resource: hands of tasks, stays in oven or fridge, and hours that are blocked. */
export function holdsOf(problem: DayProblem, nodes: Nodes): Hold[] {
  const node = (id: string) => nodeOf(nodes, id)
  const active = new Map(problem.tasks.map(({ id, activeSeconds }) => [id, activeSeconds]))
  const celsius = undefined
  return [
    ...problem.tasks.flatMap(({ id, activeSeconds, uses }) =>
      activeSeconds === 0
        ? []
        : uses.map(({ resource, count }) => ({
            ...{ resource, count, begin: node(id), fromSeconds: 0 },
            ...{ end: node(id), toSeconds: activeSeconds, celsius },
          })),
    ),
    ...problem.stays.map((stay) => ({
      ...{ resource: stay.resource, count: stay.count, begin: node(stay.from), fromSeconds: 0 },
      end: node(stay.to),
      toSeconds: (active.get(stay.to) ?? 0) + stay.afterSeconds,
      celsius: stay.celsius,
    })),
    ...problem.blocks.map(({ resource, count, fromSeconds, toSeconds }) => ({
      ...{ resource, count, begin: 0, fromSeconds, end: 0, toSeconds, celsius },
    })),
  ]
}

export function nodeOf({ ofTask }: Nodes, id: string): number {
  const node = ofTask.get(id)
  if (node === undefined) throw new Error(`the day has no task ${id}`)
  return node
}

/** The demand that one hold comes wholly before another, the oven's change of temperature included. */
export function beforeDemand(
  one: Hold,
  other: Hold,
  oven: DayProblem['oven'],
): { from: number; to: number; seconds: number } {
  const change = changeSeconds(one.celsius, other.celsius, oven)
  return { from: one.end, to: other.begin, seconds: one.toSeconds + change - other.fromSeconds }
}

/** True where two holds of an oven want different temperatures, so that they never overlap whatever room there is. */
export function clash(one: Hold, other: Hold): boolean {
  return one.celsius !== undefined && other.celsius !== undefined && one.celsius !== other.celsius
}

function changeSeconds(
  from: number | undefined,
  to: number | undefined,
  oven: DayProblem['oven'],
): number {
  if (from === undefined || to === undefined) return 0
  const kelvin = to - from
  return Math.ceil(
    kelvin > 0 ? kelvin * oven.heatSecondsPerKelvin : -kelvin * oven.coolSecondsPerKelvin,
  )
}
