import { type DayTask, dayTasks, taskKey } from '@/core/clock-plan/day-tasks.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Step } from '@/core/trial/step.ts'
import { bakedUnits, bakeOf } from './bake-entry.ts'
import type { Standing } from './effective-events.ts'
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
}

/**
 * Every repeat of every step that the plan asks of this session, in dough order and within a dough in the method's order, with
 * its stamps from the log. Steps per batch belong to the dough; once one dough has run apart into levels they belong to its
 * pieces. Into the oven begins a bake and out of the oven ends it. A step that was never stopped ends when the next
 * of the same dough or piece begins. Spare pieces are left out until something is logged of them.
 */
export function stepRuns(session: Session, plan: Plan, effective: readonly Standing[]): StepRun[] {
  const stamps = stampsOf(plan, effective)
  const touched = new Set(effective.map((event) => event.about.id))
  const tasks = dayTasks(plan, session, (pieceId) => touched.has(pieceId))
  return session.dealt.doughOrder.flatMap((batchId) => {
    const own = tasks.filter((task) => task.batchId === batchId)
    return endByNext(
      own.map((task) => ({
        ...task,
        startedAt: stamps.get(`start ${taskKey(task)}`) ?? null,
        handsOffAt: stamps.get(`hands-off ${taskKey(task)}`) ?? null,
        stoppedAt: stamps.get(`stop ${taskKey(task)}`) ?? null,
        skipped: stamps.has(`skip ${taskKey(task)}`),
      })),
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
