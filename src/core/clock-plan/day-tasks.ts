import { mixedApart } from '@/core/trial/doughs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Step } from '@/core/trial/step.ts'
import { stepAtLevel } from '@/core/trial/step-at-level.ts'
import { type DealtDay, piecesByLoad, type WorkedUnit } from './dealt-day.ts'
import { splitIndex } from './split-index.ts'

/** One repeat of a step on one dough or piece, as its level has it. */
export interface DayTask {
  unit: WorkedUnit
  batchId: string
  levelId: string | null
  step: Step
  /** From 1. */
  repeat: number
}

/**
 * Every repeat of every step that the plan asks of a session, in dough order and within a dough in the method's order. Steps
 * per batch belong to the dough; once one dough has run apart into levels they belong to its pieces, in the order they are
 * baked. Of the spare pieces those that are `worked` alone.
 */
export function dayTasks(
  plan: Plan,
  day: DealtDay,
  worked: (pieceId: string) => boolean = () => false,
): DayTask[] {
  const byLoad = piecesByLoad(day).map(({ id }) => id)
  const turnOf = (id: string) => (byLoad.includes(id) ? byLoad.indexOf(id) : byLoad.length)
  return day.dealt.doughOrder.flatMap((batchId) => {
    const levelId = day.batches.find(({ id }) => id === batchId)?.levelId ?? null
    const pieces = day.pieces
      .filter((piece) => piece.batchId === batchId && (piece.role !== 'spare' || worked(piece.id)))
      .toSorted((one, other) => turnOf(one.id) - turnOf(other.id))
    const unitsOf = unitsByStep(plan, batchId, levelId, pieces)
    return plan.steps.flatMap((step, index) =>
      unitsOf(step, index).flatMap((own) => repeatsOf(plan, batchId, step, own)),
    )
  })
}

/** The tasks that one unit goes through: its own, and those of the whole dough it belongs to. */
export function lineOf<Task extends DayTask>(tasks: readonly Task[], unitId: string): Task[] {
  return tasks.filter(({ unit }) => unit.kind === 'batch' || unit.id === unitId)
}

/** The ids of the lines in which a dough is worked: its pieces, or the dough itself where no step is done to a piece. */
export function lineIds(batchId: string, tasks: readonly DayTask[]): string[] {
  const ids = new Set(tasks.flatMap(({ unit }) => (unit.kind === 'piece' ? [unit.id] : [])))
  return ids.size > 0 ? [...ids] : [batchId]
}

/** Whether a task is done once for all doughs together: asked for, planned and reckoned once, logged of each dough. */
export function isForAllDoughs({ step, unit }: Pick<DayTask, 'step' | 'unit'>): boolean {
  return step.once === true && unit.kind === 'batch'
}

/** Hands and wait of one repeat, in seconds. */
export function taskSeconds({ step }: DayTask): number {
  return step.handsSeconds + step.waitSeconds
}

export function taskKey({ unit, step, repeat }: Pick<DayTask, 'unit' | 'step' | 'repeat'>): string {
  return `${unit.id} ${step.id} ${repeat}`
}

type Owner = Pick<DayTask, 'unit' | 'levelId'>

function repeatsOf(plan: Plan, batchId: string, step: Step, { unit, levelId }: Owner): DayTask[] {
  const level = plan.levels.find(({ id }) => id === levelId) ?? null
  const own = stepAtLevel(plan.factor, step, level)
  if (!own) return []
  return Array.from({ length: own.repeats }, (_, repeat) => ({
    ...{ unit, batchId, levelId, step: own, repeat: repeat + 1 },
  }))
}

function unitsByStep(
  plan: Plan,
  batchId: string,
  batchLevelId: string | null,
  pieces: readonly { id: string; levelId: string }[],
) {
  const apart = mixedApart(plan)
  const split = splitIndex(plan)
  const ofPieces = pieces.map(
    ({ id, levelId }): Owner => ({ unit: { kind: 'piece', id }, levelId }),
  )
  const ofBatch: Owner[] = [{ unit: { kind: 'batch', id: batchId }, levelId: batchLevelId }]
  return (step: Step, index: number): Owner[] =>
    step.per === 'piece' || (!apart && index >= split && step.kind !== 'divide')
      ? ofPieces
      : ofBatch
}
