import { splitIndex } from '@/core/clock-plan/split-index.ts'
import { stepAtLevel } from '@/core/clock-plan/step-at-level.ts'
import { mixedApart } from '@/core/trial/doughs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Step } from '@/core/trial/step.ts'
import type { Standing } from './effective-events.ts'
import { piecesOfBatch, type Unit } from './line.ts'
import type { Session } from './session-record.ts'

/** One repeat of a step on one dough or piece, as its level has it, with when it was begun and ended (UTC ms). */
export interface StepRun {
  unit: Unit
  batchId: string
  levelId: string | null
  step: Step
  /** From 1. */
  repeat: number
  startedAt: number | null
  stoppedAt: number | null
}

/**
 * Every repeat of every step that the plan asks of this session, in dough order and within a dough in the method's order, with
 * its stamps from the log. Steps per batch belong to the dough; once one dough has run apart into levels they belong to its
 * pieces. A piece's way into and out of the oven starts and stops its bake. A step that was never stopped ends when the next
 * of the same dough or piece begins. Spare pieces are left out until something is logged of them.
 */
export function stepRuns(session: Session, plan: Plan, effective: readonly Standing[]): StepRun[] {
  const stamps = stampsOf(plan, effective)
  const touched = new Set(effective.map((event) => event.about.id))
  return session.dealt.doughOrder.flatMap((batchId) => {
    const batch = session.batches.find((one) => one.id === batchId)
    const pieces = bakingOrder(session, batchId).filter(
      (piece) => piece.role !== 'spare' || touched.has(piece.id),
    )
    const unitsOf = unitsByStep(plan, batchId, batch?.levelId ?? null, pieces)
    const runs = plan.steps.flatMap((step, index) =>
      unitsOf(step, index).flatMap(({ unit, levelId }) => {
        const level = plan.levels.find((one) => one.id === levelId) ?? null
        const own = stepAtLevel(plan.factor, step, level)
        if (!own) return []
        return Array.from({ length: own.repeats }, (_, repeat) => ({
          unit,
          batchId,
          levelId,
          step: own,
          repeat: repeat + 1,
          startedAt: stamps.get(stampKey('start', unit.id, step.id, repeat + 1)) ?? null,
          stoppedAt: stamps.get(stampKey('stop', unit.id, step.id, repeat + 1)) ?? null,
        }))
      }),
    )
    return endByNext(runs)
  })
}

/**
 * How long one repeat of a step runs from its start to its end: hands and wait; in the oven the wait alone, since its start is
 * stamped when the piece is in.
 */
export function runSeconds(step: Step): number {
  return (step.kind === 'bake' ? 0 : step.handsSeconds) + step.waitSeconds
}

const stampKey = (what: 'start' | 'stop', unitId: string, stepId: string, repeat: number) =>
  `${what} ${unitId} ${stepId} ${repeat}`

function stampsOf(plan: Plan, effective: readonly Standing[]): Map<string, number> {
  const bake = plan.steps.find((step) => step.kind === 'bake')
  const stamps = new Map<string, number>()
  for (const event of effective) {
    const { about, at } = event
    if (event.kind === 'step-started' || event.kind === 'step-stopped') {
      const what = event.kind === 'step-started' ? 'start' : 'stop'
      stamps.set(stampKey(what, about.id, event.stepId, event.repeat), at)
    } else if (bake && (event.kind === 'bake-in' || event.kind === 'bake-out')) {
      stamps.set(stampKey(event.kind === 'bake-in' ? 'start' : 'stop', about.id, bake.id, 1), at)
    }
  }
  return stamps
}

function unitsByStep(
  plan: Plan,
  batchId: string,
  batchLevelId: string | null,
  pieces: readonly { id: string; levelId: string }[],
) {
  const apart = mixedApart(plan)
  const split = splitIndex(plan)
  const ofPieces = pieces.map(({ id, levelId }) => ({
    unit: { kind: 'piece', id } satisfies Unit,
    levelId,
  }))
  const ofBatch = [{ unit: { kind: 'batch', id: batchId } satisfies Unit, levelId: batchLevelId }]
  return (step: Step, index: number): { unit: Unit; levelId: string | null }[] =>
    step.per === 'piece' || (!apart && index >= split && plan.steps[index]?.kind !== 'divide')
      ? ofPieces
      : ofBatch
}

function bakingOrder(session: Session, batchId: string) {
  const loaded = session.dealt.loads
    .toSorted((one, other) => one.number - other.number)
    .flatMap((load) => load.pieceIds)
  const place = (id: string) => (loaded.includes(id) ? loaded.indexOf(id) : loaded.length)
  return piecesOfBatch(session, batchId).toSorted((one, other) => place(one.id) - place(other.id))
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
