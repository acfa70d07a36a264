import { type DayTask, dayTasks, taskKey } from '@/core/clock-plan/day-tasks.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Step } from '@/core/trial/step.ts'
import { bakedUnits, bakeOf } from './bake-entry.ts'
import type { Standing } from './effective-events.ts'
import type { EventOf } from './event-record.ts'
import type { Unit } from './line.ts'
import type { Session } from './session-record.ts'

/** One repeat of a step on one dough or piece, as its level has it, with when it was begun and ended (UTC ms). */
export interface StepRun extends DayTask {
  startedAt: number | null
  /** When the work was done and the wait began; null where that was not said. */
  handsOffAt: number | null
  stoppedAt: number | null
  /** It was said that this one is not done. */
  skipped: boolean
  /** A repeat beyond the planned ones, done to this dough or piece as to another. */
  added: boolean
  /** Its wait was made so much longer than planned, as another's was; below zero shorter. */
  moreSeconds: number
}

/**
 * Every repeat of every step that the plan asks of this session, in dough order and within a dough in the method's order, with
 * its stamps from the log. Steps per batch belong to the dough; once one dough has run apart into levels they belong to its
 * pieces. Into the oven begins a bake and out of the oven ends it. A step that was never stopped ends when the next
 * of the same dough or piece begins. Spare pieces are left out until something is logged of them. A repeat that was added
 * beyond the plan follows the step's last one.
 */
export function stepRuns(session: Session, plan: Plan, effective: readonly Standing[]): StepRun[] {
  const stamps = stampsOf(plan, effective)
  const touched = new Set(effective.map((event) => event.about.id))
  const additions = effective.filter((event) => event.kind === 'step-added')
  const more = moreWaits(effective)
  const tasks = dayTasks(plan, session, (pieceId) => touched.has(pieceId))
  return session.dealt.doughOrder.flatMap((batchId) => {
    const own = withAdded(
      tasks.filter((task) => task.batchId === batchId),
      additions,
    )
    return endByNext(
      own.map((task) => {
        const key = taskKey(task)
        return {
          ...task,
          moreSeconds: more.get(key) ?? 0,
          startedAt: stamps.get(`start ${key}`) ?? null,
          handsOffAt: stamps.get(`hands-off ${key}`) ?? null,
          stoppedAt: stamps.get(`stop ${key}`) ?? null,
          skipped: stamps.has(`skip ${key}`),
        }
      }),
    )
  })
}

/**
 * How long one repeat of a step runs from its start to its end: hands and wait; in the oven the wait alone, since its start is
 * stamped when the piece is in.
 */
export function runSeconds(step: Step): number {
  return (step.kind === 'bake' ? 0 : step.handsSeconds) + step.waitSeconds
}

/** How long the wait of a run is to be: as planned, or as it was changed to match another's. Never below zero. */
export const waitSeconds = ({ step, moreSeconds }: StepRun): number =>
  Math.max(0, step.waitSeconds + moreSeconds)

/** How long a run is to take from its start to its end, with what was changed of its wait. */
export const asAgreedSeconds = (run: StepRun): number =>
  runSeconds({ ...run.step, waitSeconds: waitSeconds(run) })

/** The tasks of one dough with the repeats that were added beyond the plan, each after the last one of its step. */
function withAdded(
  tasks: readonly DayTask[],
  additions: readonly EventOf<'step-added'>[],
): (DayTask & { added: boolean })[] {
  const all = tasks.map((task) => ({ ...task, added: false }))
  for (const event of additions) {
    const isOfIt = ({ unit, step }: DayTask) =>
      unit.id === event.about.id && step.id === event.stepId
    const at = all.findLastIndex(isOfIt)
    const last = all[at]
    if (last && last.repeat < event.repeat)
      all.splice(at + 1, 0, { ...last, repeat: event.repeat, added: true })
  }
  return all
}

/** By how much each repeat of a step was said to wait longer, by its key; of several sayings the last stands. */
function moreWaits(effective: readonly Standing[]): ReadonlyMap<string, number> {
  const more = new Map<string, number>()
  for (const event of effective)
    if (event.kind === 'wait-changed')
      more.set(`${event.about.id} ${event.stepId} ${event.repeat}`, event.moreSeconds)
  return more
}

const stampNames = {
  'step-started': 'start',
  'hands-off': 'hands-off',
  'step-stopped': 'stop',
  'step-skipped': 'skip',
} as const

/** Whether an entry is about one repeat of a step. */
export const isOfStep = (event: Standing): event is Standing & { kind: keyof typeof stampNames } =>
  event.kind in stampNames

function stampsOf(plan: Plan, effective: readonly Standing[]): Map<string, number> {
  const stamps = new Map<string, number>()
  for (const event of effective) {
    const { about, at } = event
    if (isOfStep(event)) {
      stamps.set(`${stampNames[event.kind]} ${about.id} ${event.stepId} ${event.repeat}`, at)
    } else if (event.kind === 'bake-in' || event.kind === 'bake-out') {
      const bake = bakeOf(event, plan)
      if (!bake) continue
      const end = event.kind === 'bake-in' ? 'start' : 'stop'
      for (const id of bakedUnits(event))
        stamps.set(`${end} ${id} ${bake.stepId} ${bake.repeat}`, at)
    }
  }
  return stamps
}

function endByNext(runs: StepRun[]): StepRun[] {
  return runs.map((run, index) => {
    if (run.startedAt === null || run.stoppedAt !== null) return run
    const { startedAt } = run
    const next = runs
      .slice(index + 1)
      .find((later) => later.startedAt !== null && follows(later.unit, run.unit, later.batchId))
    const stoppedAt = next?.startedAt ?? null
    return stoppedAt === null || stoppedAt < startedAt ? run : { ...run, stoppedAt }
  })
}

const follows = (later: Unit, earlier: Unit, batchId: string) =>
  later.id === earlier.id || (earlier.kind === 'batch' && earlier.id === batchId)
