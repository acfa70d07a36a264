import type { AgendaItem } from '@/core/session/agenda.ts'
import { asAgreedSeconds, type StepRun, waitSeconds } from '@/core/session/step-runs.ts'

/** The run of the step an agenda item is about; undefined when the plan has none. */
export function runOf(runs: readonly StepRun[], item: AgendaItem): StepRun | undefined {
  return runs.find(
    (run) =>
      run.unit.id === item.unit.id && run.step.id === item.step.id && run.repeat === item.repeat,
  )
}

/**
 * What comes after a running step on the very same dough or piece, not begun yet; null when its line runs apart or ends. A dough
 * of one piece goes on as that piece; a launch ends a wait so, but no work by hand, after which another may stand at the oven.
 */
export function nextOnLine(runs: readonly StepRun[], item: AgendaItem): StepRun | null {
  const run = runOf(runs, item)
  if (!run) return null
  const after = runs.slice(runs.indexOf(run) + 1)
  const next = after.find(
    ({ unit, batchId }) =>
      unit.id === item.unit.id || (item.unit.kind === 'batch' && batchId === item.unit.id),
  )
  if (!next || next.startedAt !== null) return null
  const lines = new Set(
    after.flatMap(({ unit, batchId }) =>
      unit.kind === 'piece' && batchId === item.unit.id ? [unit.id] : [],
    ),
  )
  const mayFollow = next.step.kind !== 'bake' || run.step.waitSeconds > 0
  const goesOn = lines.size === 1 && mayFollow
  return next.unit.id === item.unit.id || goesOn ? next : null
}

/** The clock of a running step, from its stamp: of its rest once the hands are off, else of the whole step. */
export function clockOf(run: StepRun): { startedAt: number; goalSeconds: number } | null {
  if (run.handsOffAt !== null) return { startedAt: run.handsOffAt, goalSeconds: waitSeconds(run) }
  return run.startedAt === null
    ? null
    : { startedAt: run.startedAt, goalSeconds: asAgreedSeconds(run) }
}
