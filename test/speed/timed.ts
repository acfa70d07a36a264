import { performance } from 'node:perf_hooks'

/** Median of the milliseconds that some runs take, after ten runs to warm up. */
export function medianMilliseconds(work: () => void, runs: number): number {
  for (let warming = 0; warming < 10; warming += 1) work()
  const times = Array.from({ length: runs }, () => {
    const from = performance.now()
    work()
    return performance.now() - from
  }).toSorted((a, b) => a - b)
  return times[Math.floor(times.length / 2)] ?? 0
}
