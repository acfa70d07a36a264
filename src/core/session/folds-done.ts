import type { Plan } from '@/core/trial/plan-record.ts'
import type { Standing } from './effective-events.ts'
import type { Session } from './session-record.ts'
import { stepRuns } from './step-runs.ts'

/**
 * How many folds each dough has had and should have, in dough order. A fold counts once it was begun; folds beyond the plan
 * count too. Folds done piece by piece are not folds of the dough.
 */
export function foldsDone(
  session: Session,
  plan: Plan,
  effective: readonly Standing[],
): { batchId: string; done: number; planned: number }[] {
  const folds = new Set(plan.steps.filter((step) => step.kind === 'fold').map((step) => step.id))
  const runs = stepRuns(session, plan, effective).filter(
    (run) => folds.has(run.step.id) && run.unit.kind === 'batch',
  )
  return session.dealt.doughOrder.map((batchId) => {
    const begun = effective.flatMap((event) =>
      event.kind === 'step-started' && folds.has(event.stepId) && event.about.id === batchId
        ? [`${event.stepId} ${event.repeat}`]
        : [],
    )
    const planned = runs.filter((run) => run.batchId === batchId).length
    return { batchId, done: new Set(begun).size, planned }
  })
}
