import type { Plan } from '@/core/trial/plan-record.ts'
import type { DayProblem } from './search/day-problem.ts'

/**
 * What a day asks, without its ids and without the moment it lies at: two sessions that are dealt alike ask the same. Tasks are
 * named by their place in the list, doughs by their place among the doughs.
 */
export function dayAsks({
  tasks,
  waits,
  orders,
  stays,
  equal,
  capacities,
  oven,
}: DayProblem): string {
  const taskAt = new Map(tasks.map(({ id }, at) => [id, at]))
  const lines = [...new Set(tasks.map(({ line }) => line))]
  const at = (id: string) => taskAt.get(id) ?? -1
  return JSON.stringify([
    tasks.map(({ line, step, activeSeconds, uses }) => [
      ...[
        lines.indexOf(line),
        step,
        activeSeconds,
        uses.map(({ resource, count }) => [resource, count]),
      ],
    ]),
    waits.map((wait) => [
      at(wait.from),
      at(wait.to),
      wait.seconds,
      wait.earlySeconds,
      wait.lateSeconds,
    ]),
    orders.map((order) => [at(order.from), at(order.to), order.seconds, order.fromBegin ?? false]),
    stays.map((stay) => [
      stay.resource,
      stay.count,
      at(stay.from),
      at(stay.to),
      stay.celsius ?? null,
    ]),
    equal.map(({ spans, toleranceSeconds }) => [
      toleranceSeconds,
      spans.map((span) => [
        at(span.from),
        at(span.to),
        span.fromEnd ?? false,
        span.toEnd ?? false,
        span.lessSeconds ?? 0,
      ]),
    ]),
    [Object.entries(capacities), oven],
  ])
}

/**
 * The key of a day and of what was wished for it: kept times hold for the day that has it and for no other. `levelIds` are the
 * levels in the order of the session's doughs.
 */
export function dayKey(
  problem: DayProblem,
  { day, zone }: Pick<Plan, 'day' | 'zone'>,
  levelIds: readonly (string | null)[],
): string {
  const { kept: _, ...wishes } = day ?? {}
  const text = JSON.stringify([dayAsks(problem), wishes, zone, levelIds])
  return hashOf(text, 0x811c9dc5) + hashOf(text, 0x01000193)
}

/** Fowler, Noll and Vo's hash (1a, 32 bits, from memory) from a seed, as eight hexadecimal digits: tells texts apart, keeps no secret. */
function hashOf(text: string, seed: number): string {
  let hash = seed
  for (let at = 0; at < text.length; at += 1)
    hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193)
  return (hash >>> 0).toString(16).padStart(8, '0')
}
