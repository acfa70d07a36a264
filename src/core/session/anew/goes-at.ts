import { type DayTask, taskKey } from '@/core/clock-plan/day-tasks.ts'
import { dayByTimes } from '@/core/clock-plan/planned-day.ts'
import type { DayAsked } from '@/core/clock-plan/problem-of-day.ts'
import type { Placed } from '@/core/clock-plan/search/day-problem.ts'
import type { AgendaItem } from '@/core/session/agenda.ts'

/** When the hands come to something by the day made anew: to begin it, and to end it or its wait; UTC ms. */
export interface TaskAnew {
  beginAt: number
  endAt: number
}

/** The day made anew, task by task, by the tasks' keys; what is passed over or lost (`left`) is not among them. */
export function tasksAnew(
  { parts, rough }: DayAsked,
  begins: Placed,
  left: ReadonlySet<string>,
  originAt: number,
): Map<string, TaskAnew> {
  const gone = new Set(parts.flatMap(({ id, taskKeys }) => (left.has(id) ? taskKeys : [])))
  const still = {
    parts: parts.filter(({ id }) => !left.has(id)),
    rough: { ...rough, tasks: rough.tasks.filter((task) => !gone.has(taskKey(task))) },
  }
  const { tasks, startAt } = dayByTimes(still, begins, originAt)
  const at = (seconds: number) => (startAt ?? originAt) + seconds * 1000
  return new Map(
    tasks.map((task) => [
      taskKey(task),
      { beginAt: at(task.beginSeconds), endAt: at(task.endSeconds) },
    ]),
  )
}

type Asked = Pick<AgendaItem, 'do' | 'dueAt'> & Pick<DayTask, 'unit' | 'step' | 'repeat'>

/** When something is done by the day made anew; by the log and the plan alone where it was not made anew, or knows nothing of it. */
export function goesAt(tasks: ReadonlyMap<string, TaskAnew> | null, item: Asked): number | null {
  const task = tasks?.get(taskKey(item))
  if (!task) return item.dueAt
  return item.do === 'start' ? task.beginAt : task.endAt
}
