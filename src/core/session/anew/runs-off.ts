import { taskKey } from '@/core/clock-plan/day-tasks.ts'
import type { PlannedDay } from '@/core/clock-plan/planned-day.ts'
import type { AgendaItem } from '@/core/session/agenda.ts'
import type { StepRun } from '@/core/session/step-runs.ts'

/** As near to its planned moment a day goes as planned; seconds. */
export const asPlannedSeconds = 60

/**
 * Whether a day that was begun stands off its plan: something is due more than a minute sooner or later than planned from the
 * first hand on, or more than a minute past its moment at `now` (UTC ms). Such a day is made anew; any other keeps its times.
 */
export function runsOff(
  items: readonly AgendaItem[],
  day: PlannedDay,
  runs: readonly StepRun[],
  now: number,
): boolean {
  const [first] = runs
    .flatMap((run) => (run.startedAt === null ? [] : [{ run, startedAt: run.startedAt }]))
    .toSorted((one, other) => one.startedAt - other.startedAt)
  if (!first) return false
  const { step } = first.run
  const hands = step.kind === 'bake' ? step.handsSeconds : 0
  const begun = day.byKey.get(taskKey(first.run))?.beginSeconds ?? 0
  const originAt = first.startedAt - (begun + hands) * 1000
  return items.some((item) => {
    const { dueAt } = item
    if (dueAt === null) return false
    const planned = day.byKey.get(taskKey(item))
    if (!planned) return true
    const seconds = item.do === 'start' ? planned.beginSeconds : planned.endSeconds
    const off = Math.abs(dueAt - originAt - seconds * 1000)
    return Math.max(off, now - dueAt) > asPlannedSeconds * 1000
  })
}
