import { mixedApart } from '@/core/trial/doughs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { DealtDay } from './dealt-day.ts'
import type { RoughDay, RoughTask } from './rough-day.ts'

/** Which of its level's counted pieces a piece is, in the order they are baked: its flight. */
export function rowsOf(plan: Plan, day: DealtDay): Map<string, number> {
  const loaded = day.dealt.loads
    .toSorted((one, other) => one.number - other.number)
    .flatMap(({ pieceIds }) => pieceIds)
  return new Map(
    plan.levels.flatMap(({ id: levelId }) =>
      day.pieces
        .filter((piece) => piece.levelId === levelId && piece.role === 'counted')
        .toSorted((one, other) => loaded.indexOf(one.id) - loaded.indexOf(other.id))
        .map(({ id }, row) => [id, row + 1] as const),
    ),
  )
}

/**
 * What a line waits for the oven beyond the method, at the step where it waits: after the last long wait, so that the pieces
 * of a later load stand as balls and not opened; without one, before the bake.
 */
export function queuedAt(
  line: readonly RoughTask[],
  together: number,
  planned: RoughDay,
  mates: ReadonlySet<string>,
): (index: number) => number {
  const bake = line.findIndex(({ step }) => step.kind === 'bake')
  const launch = line[bake]
  if (!launch) return () => 0
  const seconds = meanQueue(mates, planned)
  const where = together < 0 ? bake : together + 1
  return (index) => (index === where ? seconds : 0)
}

/** The bakes a unit is compared with: those of its flight where pieces are eaten hot, else those of its load; of one dough each alone. */
export function matesOf(plan: Plan, day: DealtDay, { bakes }: RoughDay, id: string): Set<string> {
  if (!mixedApart(plan)) return new Set([id])
  const rows = rowsOf(plan, day)
  const own = bakes.find((bake) => bake.id === id)
  const alike = (bake: { id: string; load: number }) =>
    bake.id === id ||
    (plan.serving === 'as-baked' && rows.has(id)
      ? rows.get(bake.id) === rows.get(id)
      : bake.load === own?.load)
  return new Set(bakes.filter(alike).map((bake) => bake.id))
}

/** What some bakes wait for the oven in the planned day, on average and in whole seconds: the same for all of them. */
function meanQueue(mates: ReadonlySet<string>, { tasks }: RoughDay): number {
  const first = new Map<string, number>()
  for (const { unit, step, readySeconds, beginSeconds } of tasks)
    if (step.kind === 'bake' && mates.has(unit.id) && !first.has(unit.id))
      first.set(unit.id, beginSeconds - readySeconds)
  const waits = [...first.values()]
  return Math.round(waits.reduce((sum, wait) => sum + wait, 0) / Math.max(1, waits.length))
}
