import type { Placed } from '@/core/clock-plan/search/day-problem.ts'
import type { ProblemAnew } from './problem-anew.ts'
import { asPlannedSeconds } from './runs-off.ts'
import type { MadeAnew } from './solve-anew.ts'

/**
 * The planned times, where all that was begun was begun by them, nothing else is overdue and no wait was agreed or ripe
 * otherwise: such a day needs not be made anew.
 */
export function stillHolds(
  { problem, past }: ProblemAnew,
  asked: { planned: Placed; shift: number; moreSeconds: ReadonlyMap<string, number> },
): MadeAnew | null {
  const doneAt = new Map(problem.done.map(({ task, atSeconds }) => [task, atSeconds]))
  const plannedAt = (id: string) => (asked.planned[id] ?? 0) - asked.shift
  const isOff = problem.tasks.some(({ id }) => {
    const at = doneAt.get(id) ?? Math.max(plannedAt(id), problem.nowSeconds ?? 0)
    return Math.abs(at - plannedAt(id)) > asPlannedSeconds
  })
  const isAgreed = problem.waits.some(({ from }) => (asked.moreSeconds.get(from) ?? 0) !== 0)
  const active = new Map(problem.tasks.map(({ id, activeSeconds }) => [id, activeSeconds]))
  const isRipe = past.some(
    ({ from, to, byMark, plannedSeconds, lateSeconds, doneSeconds }) =>
      byMark &&
      doneSeconds === null &&
      plannedAt(to) - (doneAt.get(from) ?? 0) - (active.get(from) ?? 0) >
        plannedSeconds + lateSeconds,
  )
  if (isOff || isAgreed || isRipe) return null
  const begins = problem.tasks.map(({ id }) => [id, doneAt.get(id) ?? plannedAt(id)])
  return {
    begins: Object.fromEntries(begins),
    ...{ rung: 0, spreadRung: 0, graceSeconds: 0, laid: false },
  }
}
