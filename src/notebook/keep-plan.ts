import { locked } from '@/core/seal/lock.ts'
import { lockedChanges } from '@/core/seal/locked-change.ts'
import { mergePlans } from '@/core/trial/merge-plans.ts'
import { type Plan, planShape } from '@/core/trial/plan-record.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { changeTrial } from './change-trial.ts'
import { checked } from './checked.ts'
import type { KeptPlan } from './notebook.ts'
import { NotebookFailure } from './notebook-failure.ts'
import { isOpen, keepOpen } from './open-plan.ts'
import type { NotebookServices } from './services.ts'
import type { Store } from './store.ts'

/**
 * Since the first mix the expectation, what was written first beside it and the number of sessions stand as they were written,
 * and a main response that was chosen stays chosen, with what is better in it and its margin.
 */
function refuseUnlocking(whole: WholeTrial, plan: Plan): void {
  if (!locked(whole)) return
  const changes = lockedChanges(planInForce(whole), plan)
  if (changes.length > 0) throw new NotebookFailure('locked', changes.join(', '))
}

/**
 * Keeps a changed plan. With `base`, the plan it was changed from, it is merged field by field with the plan in force, so that
 * another window's change of other fields stays; what both changed is kept as given and told. The plan in force is changed in
 * place only while nobody else can have it: a revision that a session runs, that has left the notebook in a file or came in
 * with one stays as it is, and the change becomes the next revision under a new id. What says nothing new changes nothing.
 * Identity and numbering are the notebook's: id, revision and time in `plan` are not taken over.
 */
export async function keepPlan(
  store: Store,
  { now, zone, newId }: NotebookServices,
  plan: Plan,
  base?: Plan,
): Promise<KeptPlan> {
  const asked = checked(planShape, plan)
  return await store.transaction('rw', store.tables, async () => {
    const trial = await store.trials.get(asked.trialId)
    const head = trial && (await store.plans.get(trial.planId))
    if (trial && head && (base !== undefined || head.id === asked.id)) {
      const { plan: merged, conflicts, other } = together(base, head, asked)
      if (saysSame(head, merged))
        return {
          plan: head,
          newRevision: false,
          inUse: false,
          conflicts,
          other,
          trialRevision: trial.revision,
        }
    }
    return await changeTrial(store, asked.trialId, async (whole) => {
      const before = planInForce(whole)
      if (!whole.plans.some((each) => each.id === asked.id))
        throw new NotebookFailure('refused-record', `the trial has no plan ${asked.id}`)
      const { plan: given, conflicts, other } = together(base, before, asked)
      refuseUnlocking(whole, given)
      const inUse = whole.sessions.some((session) => session.planId === before.id)
      const open = !inUse && given.id === before.id && (await isOpen(store, before))
      const revision = whole.plans.reduce((last, each) => Math.max(last, each.revision), 0) + 1
      const stamped = { ...given, at: now(), zone }
      const next = checked(
        planShape,
        open ? { ...stamped, revision: before.revision } : { ...stamped, id: newId(), revision },
      )
      const others = whole.plans.filter((each) => each.id !== next.id)
      await store.plans.put(next)
      await keepOpen(store, next)
      const told = { plan: next, newRevision: !open, inUse, conflicts, other }
      return {
        now: { plans: [...others, next], trial: { ...whole.trial, planId: next.id } },
        told: { ...told, trialRevision: whole.trial.revision + 1 },
      }
    })
  })
}

/** What was asked for brought together with what stands, and how it would be with what stands in the fields that both changed. */
function together(base: Plan | undefined, standing: Plan, asked: Plan) {
  if (!base) return { plan: asked, conflicts: [], other: null }
  const { plan, conflicts } = mergePlans(base, standing, asked)
  const other = conflicts.length === 0 ? null : mergePlans(base, asked, standing).plan
  return { plan, conflicts, other }
}

/** Whether two revisions say the same, apart from when they were written. */
function saysSame(a: Plan, b: Plan): boolean {
  const text = (plan: Plan) =>
    JSON.stringify(planShape.parse({ ...plan, at: 0, zone: 'UTC', revision: 1 }))
  return text(a) === text(b)
}
