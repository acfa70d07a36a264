import type { KeptTimes } from '@/core/trial/day-wishes.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { dayKey } from './day-key.ts'
import type { DealtDay } from './dealt-day.ts'
import type { DayProblem, Placed } from './search/day-problem.ts'

/** Times from a search as the plan keeps them; `originAt` is second 0, UTC ms. */
export function timesToKeep(
  { plan, day, problem }: { plan: Plan; day: DealtDay & { number: number }; problem: DayProblem },
  begins: Placed,
  originAt: number,
): KeptTimes {
  return {
    session: day.number,
    dayKey: dayKey(problem, plan, levelIdsOf(day)),
    originAt,
    beginSeconds: problem.tasks.map(({ id }) => begins[id] ?? 0),
  }
}

/** The times that are kept for this very day; null where none are, or the plan, the deal or the wishes have changed since. */
export function keptTimes(
  plan: Plan,
  day: DealtDay,
  problem: DayProblem,
): { begins: Placed; originAt: number } | null {
  const kept = plan.day?.kept
  if (!kept || kept.beginSeconds.length !== problem.tasks.length) return null
  if (kept.dayKey !== dayKey(problem, plan, levelIdsOf(day))) return null
  return {
    begins: Object.fromEntries(problem.tasks.map(({ id }, at) => [id, kept.beginSeconds[at] ?? 0])),
    originAt: kept.originAt,
  }
}

const levelIdsOf = ({ dealt, batches }: DealtDay) =>
  dealt.doughOrder.map((batchId) => batches.find(({ id }) => id === batchId)?.levelId ?? null)
