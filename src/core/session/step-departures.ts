import type { Plan } from '@/core/trial/plan-record.ts'
import { begunBy } from './bake-entry.ts'
import type { Departure } from './departure.ts'
import type { Standing } from './effective-events.ts'
import { runSeconds, type StepRun } from './step-runs.ts'

/**
 * Steps that ran outside their tolerance (those that end by the clock: a mark or reading sets its own time), steps passed over
 * (a later one of the same dough or piece was begun), and repeats beyond the planned.
 */
export function stepDepartures(
  runs: readonly StepRun[],
  plan: Plan,
  effective: readonly Standing[],
): Departure[] {
  return [...waits(runs), ...missing(runs), ...extra(runs, plan, effective)]
}

function waits(runs: readonly StepRun[]): Departure[] {
  return runs.flatMap((run): Departure[] => {
    const { unit, batchId, levelId, step, repeat, startedAt, stoppedAt } = run
    if (startedAt === null || stoppedAt === null || step.endsBy.by !== 'clock') return []
    // A clock that was set back between the two tells nothing.
    if (stoppedAt < startedAt) return []
    const plannedSeconds = runSeconds(step)
    const doneSeconds = (stoppedAt - startedAt) / 1000
    const toleranceSeconds = doneSeconds < plannedSeconds ? step.earlySeconds : step.lateSeconds
    if (Math.abs(doneSeconds - plannedSeconds) <= toleranceSeconds) return []
    const where = { unit, batchId, levelId, stepId: step.id, repeat }
    return [{ what: 'wait', ...where, plannedSeconds, doneSeconds, toleranceSeconds }]
  })
}

function missing(runs: readonly StepRun[]): Departure[] {
  return runs.flatMap((run, index): Departure[] => {
    const { unit, batchId, levelId, step, repeat } = run
    if (run.startedAt !== null || run.stoppedAt !== null) return []
    // What was added beyond the plan and then left out is as planned.
    if (run.added) return []
    if (run.skipped)
      return [{ what: 'step-missing', unit, batchId, levelId, stepId: step.id, repeat }]
    const later = runs
      .slice(index + 1)
      .some((one) => one.startedAt !== null && isSameLine(run, one))
    return later ? [{ what: 'step-missing', unit, batchId, levelId, stepId: step.id, repeat }] : []
  })
}

/** A later run of the same piece or dough, or of any piece of the dough. */
const isSameLine = (run: StepRun, later: StepRun) =>
  later.batchId === run.batchId && (run.unit.kind === 'batch' || later.unit.id === run.unit.id)

function extra(runs: readonly StepRun[], plan: Plan, effective: readonly Standing[]): Departure[] {
  const asked = new Map<string, number>()
  for (const { unit, step, repeat, added } of runs) {
    if (added) continue
    const key = `${unit.id} ${step.id}`
    asked.set(key, Math.max(asked.get(key) ?? 0, repeat))
  }
  const steps = new Set(plan.steps.map((step) => step.id))
  const beginnings = effective.filter(({ kind }) => kind === 'step-started' || kind === 'bake-in')
  return beginnings.flatMap((event): Departure[] => {
    const begun = begunBy(event, plan)
    if (!begun || !steps.has(begun.stepId)) return []
    const { kind, id } = event.about
    if (kind !== 'batch' && kind !== 'piece') return []
    const { stepId, repeat } = begun
    const planned = asked.get(`${id} ${stepId}`) ?? 0
    if (repeat <= planned) return []
    // A piece that goes into the oven before the dough it is baked with is no bake more.
    if (event.kind === 'bake-in' && planned === 0) return []
    return [{ what: 'step-extra', unit: { kind, id }, stepId, repeat, planned }]
  })
}
