import type { Plan } from '@/core/trial/plan-record.ts'
import { type DayTask, lineIds, lineOf, taskKey } from './day-tasks.ts'
import type { DealtDay } from './dealt-day.ts'
import { firstTimes } from './first-times.ts'
import { keptTimes } from './kept-times.ts'
import type { OvenBake } from './oven-bake.ts'
import { type DayAsked, problemOfDay } from './problem-of-day.ts'
import type { Placed } from './search/day-problem.ts'
import type { WorkPart } from './work-part.ts'

/** A task with its moments, in seconds from the day's first hand: hands begin, and its wait ends as planned. */
export interface PlannedTask extends DayTask {
  beginSeconds: number
  endSeconds: number
}

export interface PlannedDay {
  /** In dough order, and within a dough in the method's order. */
  tasks: PlannedTask[]
  byKey: ReadonlyMap<string, PlannedTask>
  bakes: OvenBake[]
  /** When each part of the work begins. */
  begins: Placed
  /** From the first hand to the last thing done. */
  spanSeconds: number
  /** When the first hand begins (UTC ms) where a moment was fixed and the times found for it are kept; else null. */
  startAt: number | null
}

/**
 * The day of one session as it is planned, the only one: the Bench asks by it, the fairness check judges by it, the plan's page
 * states it and the terminal prints it. It is the one that was searched and kept for a time of day, as long as it still holds
 * for this plan and deal; else the quick first plan of the same model.
 */
export function plannedDay(plan: Plan, day: DealtDay): PlannedDay {
  const asked = problemOfDay(plan, day)
  const kept = keptTimes(plan, day, asked.problem)
  return dayByTimes(asked, kept?.begins ?? firstTimes(asked), kept?.originAt ?? null)
}

/** A day by the moments at which its parts begin; `originAt` is their second 0, UTC ms. */
export function dayByTimes(
  { parts, rough }: Pick<DayAsked, 'parts' | 'rough'>,
  begins: Placed,
  originAt: number | null,
): PlannedDay {
  const first = Math.min(...parts.map(({ id }) => begins[id] ?? 0))
  const at = (id: string) => (begins[id] ?? first) - first
  const begun = beginsOf(parts, at)
  const pulls = new Map(
    parts.flatMap((part) => (part.what === 'pull' ? [[part.id, at(part.id)] as const] : [])),
  )
  const overs = new Map(
    parts.flatMap((part) =>
      part.what === 'over' ? [[part.after[0]?.from, at(part.id)] as const] : [],
    ),
  )
  const partOf = new Map(parts.flatMap((part) => part.taskKeys.map((key) => [key, part] as const)))
  const doughs = new Map<string, DayTask[]>()
  for (const task of rough.tasks)
    doughs.set(task.batchId, [...(doughs.get(task.batchId) ?? []), task])
  const tasks = rough.tasks.map((task): PlannedTask => {
    const own = doughs.get(task.batchId) ?? []
    const key = taskKey(task)
    const part = partOf.get(key)
    const beginSeconds = begun.get(key) ?? 0
    const handsOff = beginSeconds + task.step.handsSeconds
    const pulled = part && pulls.get(`${part.id} out`)
    if (pulled !== undefined) return { ...task, beginSeconds, endSeconds: pulled }
    if (task.step.waitSeconds === 0) return { ...task, beginSeconds, endSeconds: handsOff }
    const nexts = nextKeys(own, task).map((next) => begun.get(next) ?? handsOff)
    const over = part && overs.get(part.id)
    const endSeconds = Math.max(
      handsOff,
      nexts.length > 0 ? Math.min(...nexts) : (over ?? handsOff + task.step.waitSeconds),
    )
    return { ...task, beginSeconds, endSeconds }
  })
  return {
    tasks,
    byKey: new Map(tasks.map((task) => [taskKey(task), task])),
    bakes: rough.bakes,
    begins: Object.fromEntries(parts.map(({ id }) => [id, at(id)])),
    spanSeconds: Math.max(0, ...tasks.map(({ endSeconds }) => endSeconds)),
    startAt: originAt === null ? null : originAt + first * 1000,
  }
}

/** When each task begins: what is done to several pieces in one go, one after another. */
function beginsOf(parts: readonly WorkPart[], at: (id: string) => number): Map<string, number> {
  return new Map(
    parts.flatMap((part) =>
      part.taskKeys.map(
        (key, turn) =>
          [key, at(part.id) + (part.forAll ? 0 : turn * part.step.handsSeconds)] as const,
      ),
    ),
  )
}

/** What follows a task on each line that it belongs to. */
function nextKeys(own: readonly DayTask[], task: DayTask): string[] {
  const lines = task.unit.kind === 'piece' ? [task.unit.id] : lineIds(task.batchId, own)
  const keys = lines.flatMap((id) => {
    const line = lineOf(own, id)
    const next = line[line.indexOf(task) + 1]
    return next ? [taskKey(next)] : []
  })
  return [...new Set(keys)]
}
