import type { DayProblem, Placed } from '@/core/clock-plan/search/day-problem.ts'

export interface Checked {
  faults: string[]
  rung: number
  spreadRung: number
  spanSeconds: number
}

/** The least number of quarters of a tolerance that covers so many seconds. */
function rungOf(seconds: number, tolerance: number): number {
  for (let rung = 0; rung <= 4000; rung += 1)
    if (Math.floor((tolerance * rung) / 4) >= seconds) return rung
  return Number.POSITIVE_INFINITY
}

/** Looks at a plan second by second and demand by demand, sharing nothing with the search but the record it reads. */
export function checkDay(problem: DayProblem, at: Placed): Checked {
  const faults: string[] = []
  const task = (id: string) => problem.tasks.find((one) => one.id === id)
  const begin = (id: string) => at[id] ?? Number.NaN
  const end = (id: string) => begin(id) + (task(id)?.activeSeconds ?? 0)
  for (const { id } of problem.tasks)
    if (!Number.isInteger(begin(id))) faults.push(`${id} has no whole second`)
  let rung = 1
  for (const wait of problem.waits) {
    const waited = begin(wait.to) - end(wait.from)
    if (waited < 0) faults.push(`${wait.to} before ${wait.from} ended`)
    const off = waited - wait.seconds
    rung = Math.max(rung, rungOf(Math.abs(off), off < 0 ? wait.earlySeconds : wait.lateSeconds))
  }
  for (const { from, to, fromBegin, seconds } of problem.orders)
    if (begin(to) < (fromBegin ? begin(from) : end(from)) + seconds)
      faults.push(`${to} before ${from}`)
  for (const { task: id, atSeconds } of problem.done)
    if (begin(id) !== atSeconds) faults.push(`${id} was done at ${atSeconds}`)
  const first = Math.min(...problem.tasks.map(({ id }) => begin(id)))
  const last = Math.max(...problem.tasks.map(({ id }) => end(id)))
  const { window } = problem
  if (window.startFixed ? first !== window.startSeconds : first < window.startSeconds)
    faults.push(`begun at ${first}`)
  const { endSeconds } = window
  if (endSeconds !== undefined && (window.endFixed ? last !== endSeconds : last > endSeconds))
    faults.push(`ends at ${last}`)
  for (const resource of Object.keys(problem.capacities))
    faults.push(...overfull(problem, at, resource))
  const spreads = problem.equal
    .filter(({ spans }) => spans.length > 1)
    .map(({ spans, toleranceSeconds }) => {
      const ages = spans.map(
        ({ from, to, fromEnd, toEnd, lessSeconds = 0 }) =>
          (toEnd ? end(to) : begin(to)) - (fromEnd ? end(from) : begin(from)) - lessSeconds,
      )
      return Math.max(1, rungOf(Math.max(...ages) - Math.min(...ages), toleranceSeconds))
    })
  return { faults, rung, spreadRung: Math.max(0, ...spreads), spanSeconds: last - first }
}

function overfull(problem: DayProblem, at: Placed, resource: string): string[] {
  const active = (id: string) => problem.tasks.find((one) => one.id === id)?.activeSeconds ?? 0
  const begin = (id: string) => at[id] ?? Number.NaN
  const taken = [
    ...problem.tasks.flatMap(({ id, activeSeconds, uses }) =>
      uses
        .filter((use) => use.resource === resource && activeSeconds > 0)
        .map(({ count }) => ({ who: id, from: begin(id), to: begin(id) + activeSeconds, count })),
    ),
    ...problem.stays
      .filter((stay) => stay.resource === resource)
      .map(({ from, to, afterSeconds, count, celsius }) => ({
        ...{ who: from, from: begin(from), to: begin(to) + active(to) + afterSeconds, count },
        ...(celsius === undefined ? {} : { celsius }),
      })),
  ] as { who: string; from: number; to: number; count: number; celsius?: number }[]
  const blocked = problem.blocks.filter((block) => block.resource === resource)
  const faults: string[] = []
  const moments = [...taken.map(({ from }) => from), ...blocked.map((block) => block.fromSeconds)]
  for (const moment of moments) {
    const on = taken.filter(({ from, to }) => from <= moment && moment < to)
    const away = blocked.filter((one) => one.fromSeconds <= moment && moment < one.toSeconds)
    const sum = [...on, ...away].reduce((total, { count }) => total + count, 0)
    if (on.length > 0 && sum > (problem.capacities[resource] ?? 0))
      faults.push(`${resource} ${sum} at ${moment}: ${on.map(({ who }) => who).join(' ')}`)
  }
  for (const one of taken)
    for (const other of taken) {
      if (one.celsius === undefined || other.celsius === undefined) continue
      if (one.celsius === other.celsius || one.from > other.from) continue
      const kelvin = other.celsius - one.celsius
      const { heatSecondsPerKelvin, coolSecondsPerKelvin } = problem.oven
      const needed = Math.ceil(
        Math.max(kelvin * heatSecondsPerKelvin, -kelvin * coolSecondsPerKelvin),
      )
      if (other.from < one.to + needed) faults.push(`oven not at ${other.celsius} for ${other.who}`)
    }
  return faults
}
