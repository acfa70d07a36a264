import type { DayAsked } from '@/core/clock-plan/problem-of-day.ts'
import type { DayProblem, Placed } from '@/core/clock-plan/search/day-problem.ts'
import type { WaitOfPast } from './problem-anew.ts'

/** A wait of one dough or its pieces that is, or was, longer than it may be. */
export interface LateWait {
  batchId: string
  stepId: string
  repeat: number
  /** Beyond what was planned and agreed, as it comes out; seconds. */
  seconds: number
  /** It is over: what follows was begun. */
  over: boolean
  /** It is not late yet and will be, as the hands come to it only then. */
  ahead: boolean
}

/** The waits out of the past that pass their tolerance, those that still run first, and of these the worst. */
export function lateWaits(
  { parts }: DayAsked,
  problem: DayProblem,
  past: readonly WaitOfPast[],
  begins: Placed,
  asPlanned: (from: string, to: string) => number,
): LateWait[] {
  const partOf = new Map(parts.map((part) => [part.id, part]))
  const active = new Map(problem.tasks.map(({ id, activeSeconds }) => [id, activeSeconds]))
  const found = past.flatMap((wait): LateWait[] => {
    const [from, to] = [partOf.get(wait.from), partOf.get(wait.to)]
    if (!from || !to) return []
    const comesOut =
      wait.doneSeconds ??
      (begins[wait.to] ?? 0) - (begins[wait.from] ?? 0) - (active.get(wait.from) ?? 0)
    // A day that is planned with a wait too long is not late for it.
    const planned = wait.byMark
      ? wait.plannedSeconds
      : Math.max(wait.plannedSeconds, asPlanned(wait.from, wait.to))
    const seconds = comesOut - planned
    if (seconds <= wait.lateSeconds) return []
    const { batchId, step, repeat } = from.forAll ? to : from
    const over = wait.doneSeconds !== null
    const ahead = !over && (begins[wait.to] ?? 0) > (problem.nowSeconds ?? 0)
    return [{ batchId, stepId: step.id, repeat, seconds: Math.round(seconds), over, ahead }]
  })
  return found.toSorted(
    (one, other) => Number(one.over) - Number(other.over) || other.seconds - one.seconds,
  )
}
