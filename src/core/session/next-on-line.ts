import { lineIds, lineOf, taskKey } from '@/core/clock-plan/day-tasks.ts'
import type { PlannedDay } from '@/core/clock-plan/planned-day.ts'
import type { Step } from '@/core/trial/step.ts'
import type { Session } from './session-record.ts'
import { runSeconds, type StepRun, waitSeconds } from './step-runs.ts'

/** What a dough or piece does next; `dueAt` in UTC ms, null where nothing tells. */
export interface NextOnLine {
  run: StepRun
  do: 'start' | 'end'
  dueAt: number | null
  /** The step whose wait ends with it, and so whose tolerance it has; its own where nothing came before. */
  ends: Step
}

/** What is next on every line, by the id of its piece or dough; a dough that is not begun follows the one before it. */
export function nextOfLines(
  session: Session,
  day: PlannedDay,
  runs: readonly StepRun[],
  now: number,
): Map<string, NextOnLine> {
  const found = new Map<string, NextOnLine>()
  let before: { planned: number; at: number } | null = null
  const { startAt } = day
  for (const batchId of session.dealt.doughOrder) {
    const own = runs.filter((run) => run.batchId === batchId)
    const planned = Math.min(
      ...day.tasks.flatMap((task) => (task.batchId === batchId ? [task.beginSeconds] : [])),
    )
    const firstDue: number | null =
      before === null ? startAt : before.at + (planned - before.planned) * 1000
    const lines = lineIds(batchId, own).flatMap((id) => {
      const line = lineOf(own, id)
      const next = nextOnLine(line, day, firstDue)
      return next ? [{ id, line, next }] : []
    })
    for (const { id, next } of lines) found.set(id, afterAllLines(next, lines, day))
    const startedAt = own[0]?.startedAt ?? null
    if (startedAt !== null) before = { planned, at: startedAt }
    else if (firstDue !== null) before = { planned, at: Math.max(firstDue, now) }
  }
  return found
}

function nextOnLine(
  line: readonly StepRun[],
  day: PlannedDay,
  firstDue: number | null,
): NextOnLine | null {
  const at = line.findLastIndex(isBehind)
  const last = line[at]
  if (last && last.stoppedAt === null && last.startedAt !== null) {
    return { run: last, do: 'end', dueAt: endDue(last, last.startedAt, day), ends: last.step }
  }
  const run = line[at + 1]
  if (!run) return null
  // A step that was skipped took no time: what follows is due when the one before it ended.
  const ended = line.slice(0, at + 1).findLast(({ skipped }) => !skipped)
  if (!ended) return { run, do: 'start', dueAt: firstDue, ends: run.step }
  const gap = ended === last ? gapSeconds(day, ended, run) : 0
  const dueAt = ended.stoppedAt && ended.stoppedAt + gap * 1000
  return { run, do: 'start', dueAt, ends: ended.step }
}

const isBehind = ({ startedAt, stoppedAt, skipped }: StepRun) =>
  startedAt !== null || stoppedAt !== null || skipped

/**
 * When a running step is due to end: its wait as planned and agreed after the hands are off or, while they are on it, after the
 * planned work. A bake is stamped as begun once it is in.
 */
function endDue(run: StepRun, startedAt: number, { byKey }: PlannedDay): number {
  const { step, handsOffAt, moreSeconds } = run
  const planned = byKey.get(taskKey(run))
  const waits = planned
    ? Math.max(0, planned.endSeconds - planned.beginSeconds - step.handsSeconds + moreSeconds)
    : waitSeconds(run)
  if (handsOffAt !== null) return handsOffAt + waits * 1000
  return startedAt + (runSeconds(step) - step.waitSeconds + waits) * 1000
}

/** How long after one step the next begins, as planned. */
function gapSeconds({ byKey }: PlannedDay, last: StepRun, next: StepRun): number {
  const [before, after] = [byKey.get(taskKey(last)), byKey.get(taskKey(next))]
  if (!before || !after) return 0
  return Math.max(0, after.beginSeconds - before.endSeconds)
}

/** A step of the whole dough begins when the last of its pieces is ready for it. */
function afterAllLines(
  next: NextOnLine,
  lines: readonly { line: StepRun[]; next: NextOnLine }[],
  day: PlannedDay,
): NextOnLine {
  const { run, dueAt } = next
  if (run.unit.kind === 'piece' || next.do === 'end' || dueAt === null) return next
  const dues = lines.flatMap(({ line, next: other }) => {
    const behind = other.run !== run && line.indexOf(other.run) < line.indexOf(run)
    if (!behind || other.dueAt === null) return []
    return [other.dueAt + secondsUntil(day, line, other, run) * 1000]
  })
  return { ...next, dueAt: Math.max(dueAt, ...dues) }
}

/** From what a line does next until it is ready for a later step, as planned; by the method where the plan has neither. */
export function secondsUntil(
  { byKey }: PlannedDay,
  line: readonly StepRun[],
  next: NextOnLine,
  target: StepRun,
): number {
  const planned = byKey.get(taskKey(next.run))
  const then = byKey.get(taskKey(target))
  if (planned && then) {
    return then.beginSeconds - (next.do === 'start' ? planned.beginSeconds : planned.endSeconds)
  }
  const from = line.indexOf(next.run) + (next.do === 'end' ? 1 : 0)
  return line
    .slice(from, line.indexOf(target))
    .reduce((total, { step }) => total + runSeconds(step), 0)
}
