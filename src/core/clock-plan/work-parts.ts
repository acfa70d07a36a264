import type { Plan } from '@/core/trial/plan-record.ts'
import type { Step } from '@/core/trial/step.ts'
import { stepTolerance } from '@/core/trial/step-tolerance.ts'
import { type DayTask, isForAllDoughs, lineIds, lineOf, taskKey, taskSeconds } from './day-tasks.ts'
import type { DealtDay } from './dealt-day.ts'
import { matesOf, queuedAt, rowsOf } from './oven-queue.ts'
import { usualPullSeconds } from './room-of-day.ts'
import type { RoughDay, RoughTask } from './rough-day.ts'
import type { After, HandsPart, PullPart, WorkPart } from './work-part.ts'

/** A wait this long parts what is done to all pieces of a dough at once from what is done at the oven, piece by piece. */
const longWaitSeconds = 600

/**
 * The day's tasks as the hands meet them. Until the last long wait before the oven the pieces of a dough are worked together,
 * one after another in one go; from there on each piece is a line of its own. Every bake ends with a pull.
 */
export function workParts(plan: Plan, day: DealtDay, planned: RoughDay): WorkPart[] {
  const forAll = new Map<string, WorkPart>()
  return day.dealt.doughOrder.flatMap((batchId) =>
    partsOfDough({ plan, day, planned, forAll }, batchId),
  )
}

interface DayParts {
  plan: Plan
  day: DealtDay
  planned: RoughDay
  /** What is done once for all doughs, as found so far. */
  forAll: Map<string, WorkPart>
}

function partsOfDough({ plan, day, planned, forAll }: DayParts, batchId: string): WorkPart[] {
  const own = planned.tasks.filter((task) => task.batchId === batchId)
  const parts = new Map<string, WorkPart>()
  for (const id of lineIds(batchId, own)) {
    const line = lineOf(own, id)
    const together = togetherUntil(line)
    const queued = queuedAt(line, together, planned, matesOf(plan, day, planned, id))
    let before: { part: WorkPart; task: RoughTask } | null = null
    for (const [index, task] of line.entries()) {
      const key = partKey(task, index <= together)
      const known = parts.get(key) ?? forAll.get(key)
      const waited = before ? toleranceOf(before.task.step, queued(index)) : null
      const part = known ?? handsPart(key, task, index <= together, line)
      if (!part.taskKeys.includes(taskKey(task))) {
        part.taskKeys.push(taskKey(task))
        part.unitIds.push(task.unit.id)
        part.activeSeconds += part.forAll && known ? 0 : task.step.handsSeconds
      }
      if (
        before &&
        waited &&
        before.part !== part &&
        !part.after.some(({ from }) => from === before?.part.id)
      )
        part.after.push({ from: before.part.id, ...waited })
      if (part.forAll) forAll.set(key, part)
      if (!(known && part.forAll)) parts.set(key, part)
      before = { part, task }
      const next = line[index + 1]
      if (task.step.kind === 'bake' && next?.step.kind !== 'bake') {
        const pull: WorkPart =
          parts.get(`${key} out`) ?? pullPart(plan, day, planned, task, line, part)
        if (!pull.after.some(({ from }) => from === part.id))
          pull.after.push({ from: part.id, ...toleranceOf(task.step) })
        parts.set(pull.id, pull)
        before = { part: pull, task: { ...task, step: { ...task.step, waitSeconds: 0 } } }
      }
    }
    if (before && before.task.step.waitSeconds > 0) {
      const over = overPart(before.part)
      const wait = {
        from: before.part.id,
        ...toleranceOf(before.task.step),
      }
      if (!parts.has(over.id)) parts.set(over.id, { ...over, after: [wait] })
    }
  }
  return [...parts.values()]
}

/** The last step before the bake after which the dough waits long; −1 where each piece is a line from the start. */
function togetherUntil(line: readonly DayTask[]): number {
  const bake = line.findIndex(({ step }) => step.kind === 'bake')
  const before = bake < 0 ? line : line.slice(0, bake)
  return before.findLastIndex(({ step }) => step.waitSeconds >= longWaitSeconds)
}

function partKey(task: DayTask, together: boolean): string {
  if (isForAllDoughs(task)) return `all ${task.step.id} ${task.repeat}`
  if (task.unit.kind === 'batch' || !together) return taskKey(task)
  return `${task.batchId} ${task.levelId ?? ''} ${task.step.id} ${task.repeat}`
}

function handsPart(
  id: string,
  task: DayTask,
  together: boolean,
  line: readonly DayTask[],
): HandsPart {
  const bake = line.findIndex(({ step }) => step.kind === 'bake')
  const { batchId, step, repeat, unit } = task
  return {
    ...{ what: 'work', id, batchId, step, repeat, unitIds: [], taskKeys: [], after: [] },
    activeSeconds: 0,
    forAll: isForAllDoughs(task),
    whole: together || unit.kind === 'batch',
    afterOven: bake >= 0 && line.indexOf(task) > bake,
  }
}

function overPart(last: WorkPart): HandsPart {
  const { batchId, step, repeat, unitIds, whole, forAll } = last
  return {
    ...{ what: 'over', id: `${last.id} over`, batchId, step, repeat, unitIds, taskKeys: [] },
    ...{ activeSeconds: 0, after: [], whole, afterOven: true, forAll },
  }
}

function pullPart(
  plan: Plan,
  day: DealtDay,
  planned: RoughDay,
  task: RoughTask,
  line: readonly RoughTask[],
  last: WorkPart,
): PullPart {
  const first = line.find(({ step }) => step.kind === 'bake') ?? task
  const bake = planned.bakes.find(({ id }) => id === task.unit.id)
  const piece = day.pieces.find(({ id }) => id === task.unit.id)
  const flights = rowsOf(plan, day)
  return {
    ...{ what: 'pull', id: `${last.id} out`, batchId: task.batchId, step: task.step },
    ...{ repeat: task.repeat, unitIds: [task.unit.id], taskKeys: [], after: [] },
    ...{ activeSeconds: task.step.pullSeconds ?? usualPullSeconds, forAll: false },
    ...{ whole: task.unit.kind === 'batch', afterOven: true },
    launchId: taskKey(first),
    places: bake?.places ?? 1,
    load: bake?.load ?? 0,
    celsius: first.step.celsius,
    counted: piece === undefined || piece.role === 'counted',
    flight: flights.get(task.unit.id) ?? 0,
    ageSeconds: first.beginSeconds - (line[0]?.beginSeconds ?? 0),
    methodSeconds: line
      .slice(0, line.indexOf(first))
      .reduce((total, each) => total + taskSeconds(each), 0),
  }
}

function toleranceOf(step: Step, queuedSeconds = 0): Omit<After, 'from'> {
  return { seconds: step.waitSeconds + queuedSeconds, queuedSeconds, ...stepTolerance(step) }
}
