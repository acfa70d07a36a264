import { locked } from '@/core/seal/lock.ts'
import { type Plan, planShape } from '@/core/trial/plan-record.ts'
import type { Response } from '@/core/trial/response.ts'
import { writtenFirst } from '@/core/trial/written-first.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { changeTrial } from './change-trial.ts'
import { checked } from './checked.ts'
import type { KeptPlan } from './notebook.ts'
import { NotebookFailure } from './notebook-failure.ts'
import type { NotebookServices } from './services.ts'
import type { Store } from './store.ts'

const same = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b)

/**
 * Since the first mix the expectation, what was written first beside it and the number of sessions stand as they were written, and a main response that was
 * chosen stays chosen, with what is better in it and its margin.
 */
function refuseUnlocking(whole: WholeTrial, plan: Plan): void {
  if (!locked(whole)) return
  const before = planInForce(whole)
  const stays =
    same(before.expectation, plan.expectation) &&
    same(writtenFirst(before), writtenFirst(plan)) &&
    before.plannedSessions === plan.plannedSessions &&
    responseStays(mainOf(before), mainOf(plan))
  if (!stays) throw new NotebookFailure('locked')
}

const mainOf = ({ responses, mainResponseId }: Plan) =>
  responses.find(({ id }) => id === mainResponseId)

function responseStays(before: Response | undefined, now: Response | undefined): boolean {
  if (!before) return true
  return (
    before.id === now?.id &&
    same(before.better, now.better) &&
    (before.margin === null || before.margin === now.margin)
  )
}

/**
 * Keeps a changed plan. While no session runs the plan in force it is changed in place; a plan that a session runs, or an
 * older revision, stays as it is and the change becomes the next revision under a new id. A plan that says nothing new
 * changes nothing. Identity and numbering are the notebook's: id, revision and time in `plan` are not taken over.
 */
export async function keepPlan(
  store: Store,
  { now, zone, newId }: NotebookServices,
  plan: Plan,
): Promise<KeptPlan> {
  const given = checked(planShape, plan)
  const trial = await store.trials.get(given.trialId)
  const kept = await store.plans.get(given.id)
  if (trial && kept && trial.planId === kept.id && saysSame(kept, given))
    return { plan: kept, newRevision: false }
  return await changeTrial(store, given.trialId, async (whole) => {
    const held = whole.plans.find((each) => each.id === given.id)
    if (!held) throw new NotebookFailure('refused-record', `the trial has no plan ${given.id}`)
    refuseUnlocking(whole, given)
    const inUse = whole.sessions.some((session) => session.planId === given.id)
    const newRevision = inUse || whole.trial.planId !== given.id
    const revision = whole.plans.reduce((last, each) => Math.max(last, each.revision), 0) + 1
    const stamped = { ...given, at: now(), zone }
    const next = newRevision
      ? { ...stamped, id: newId(), revision }
      : { ...stamped, revision: held.revision }
    const others = whole.plans.filter((each) => each.id !== next.id)
    await store.plans.put(next)
    return {
      now: { plans: [...others, next], trial: { ...whole.trial, planId: next.id } },
      told: { plan: next, newRevision },
    }
  })
}

/** Whether two revisions say the same, apart from when they were written. */
function saysSame(a: Plan, b: Plan): boolean {
  const text = (plan: Plan) =>
    JSON.stringify(planShape.parse({ ...plan, at: 0, zone: 'UTC', revision: 1 }))
  return text(a) === text(b)
}
