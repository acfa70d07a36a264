import { performance } from 'node:perf_hooks'

/** Median of the milliseconds that some runs take, after some to warm up. */
export function medianMilliseconds(work: () => void, runs: number, warmUps = 10): number {
  return mediansInTurn([work], runs, warmUps)[0] ?? 0
}

/**
 * The same of several works, run in turn, so that whatever else the machine does meanwhile falls on all of them alike: for
 * those whose times are to be compared.
 */
export function mediansInTurn(
  works: readonly (() => void)[],
  runs: number,
  warmUps = 10,
): number[] {
  for (let warming = 0; warming < warmUps; warming += 1) for (const work of works) work()
  const times = works.map((): number[] => [])
  for (let run = 0; run < runs; run += 1)
    for (const [at, work] of works.entries()) times[at]?.push(milliseconds(work))
  return times.map((each) => each.toSorted((a, b) => a - b)[Math.floor(runs / 2)] ?? 0)
}

/** The least of some runs: what the work takes while nothing else has the processor. */
export function leastMilliseconds(work: () => void, runs: number): number {
  return Math.min(...Array.from({ length: runs }, () => milliseconds(work)))
}

function milliseconds(work: () => void): number {
  const from = performance.now()
  work()
  return performance.now() - from
}
