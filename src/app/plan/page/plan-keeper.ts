import { failureReasonOf } from '@/core/record/failure-reason.ts'
import { mergePlans } from '@/core/trial/merge-plans.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { NotKept, PlanKeeping, PlanPage } from './plan-page.ts'

const planWaitMilliseconds = 200
const draftWaitMilliseconds = 150

interface PageState {
  get: () => PlanPage
  set: (change: Partial<PlanPage>) => void
  /** Shows another plan on the page, and judges it. */
  show: (plan: Plan) => void
}

/**
 * Writes what an open plan page changes: the plan shortly after the last key, unfinished texts too, both at once when asked.
 * One write runs at a time. What the notebook holds and what the page shows are brought together field by field against
 * `base`, the plan both began from; which of two states is newer is told by the trial's revision, never by a clock.
 */
export function createPlanKeeper(
  first: { plan: Plan; trialRevision: number },
  keeping: Pick<PlanKeeping, 'keepPlan' | 'keepDrafts'>,
  { get, set, show }: PageState,
) {
  let base = first.plan
  let knownRevision = first.trialRevision
  let planTimer: ReturnType<typeof setTimeout> | undefined
  let draftTimer: ReturnType<typeof setTimeout> | undefined
  let planWaits = false
  let draftsWait = false
  let writing: Promise<void> = Promise.resolve()
  let writes = 0
  let keys = 0
  let sending = false
  let late: { plan: Plan; trialRevision: number } | null = null

  const tellWaiting = () => set({ waiting: keys > 0 || planWaits || draftsWait || writes > 0 })

  /** The notebook's plan takes the place of the one both began from; what the page changed since stays. */
  const meetPlan = (theirs: Plan, from: Plan) => {
    const before = get().plan
    const { plan: merged, conflicts } = mergePlans(from, theirs, before)
    base = theirs
    if (conflicts.length > 0)
      set({
        clash: { paths: conflicts, here: merged, other: mergePlans(from, before, theirs).plan },
      })
    if (sameParts(before, merged)) set({ plan: merged })
    else show(merged)
  }

  const meetKept = (plan: Plan, trialRevision: number) => {
    if (trialRevision <= knownRevision) return
    // It may be what is being written just now, which is no other window's.
    if (sending) {
      late = { plan, trialRevision }
      return
    }
    knownRevision = trialRevision
    meetPlan(plan, base)
  }

  const keepPlan = async () => {
    clearTimeout(planTimer)
    if (!planWaits) return
    planWaits = false
    const sent = get().plan
    sending = true
    try {
      const kept = await keeping.keepPlan(sent, base)
      knownRevision = Math.max(knownRevision, kept.trialRevision)
      if (kept.other) set({ clash: { paths: kept.conflicts, here: kept.plan, other: kept.other } })
      meetPlan(kept.plan, sent)
      set({ newRevision: kept.inUse ? kept.plan.revision : get().newRevision, notKept: null })
    } catch (cause) {
      const failure = failureOf(cause)
      const refused = failure.reason === 'locked' || failure.reason === 'refused-record'
      // What the notebook refuses for good goes from the page at once; what it had no room for stays and waits.
      if (refused) show(base)
      else planWaits = true
      set({ notKept: { ...failure, rolledBack: refused } })
    } finally {
      sending = false
      const held = late
      late = null
      if (held) meetKept(held.plan, held.trialRevision)
    }
  }

  const keepDrafts = async () => {
    clearTimeout(draftTimer)
    if (!draftsWait) return
    draftsWait = false
    try {
      await keeping.keepDrafts(get().drafts)
      if (!planWaits) set({ notKept: null })
    } catch (cause) {
      draftsWait = true
      set({ notKept: { ...failureOf(cause), rolledBack: false } })
    }
  }

  const write = (work: () => Promise<void>) => {
    writes += 1
    writing = writing.then(work).finally(() => {
      writes -= 1
      tellWaiting()
    })
    tellWaiting()
    return writing
  }

  return {
    /** A key was typed whose change is still to be made: what is on the screen is not kept, until `done`. */
    keyTyped: () => {
      keys += 1
      tellWaiting()
      return function done() {
        keys -= 1
        tellWaiting()
      }
    },
    planChanged: () => {
      planWaits = true
      clearTimeout(planTimer)
      planTimer = setTimeout(() => void write(keepPlan), planWaitMilliseconds)
      tellWaiting()
    },
    draftsChanged: () => {
      draftsWait = true
      clearTimeout(draftTimer)
      draftTimer = setTimeout(() => void write(keepDrafts), draftWaitMilliseconds)
      tellWaiting()
    },
    meetKept,
    flush: async () => {
      await write(keepPlan)
      await write(keepDrafts)
    },
    giveUp: () => {
      planWaits = false
      draftsWait = false
      set({ notKept: null, waiting: false })
      show(base)
    },
  }
}

/** True where only the stamps differ: then nothing on the page need be judged anew. */
function sameParts(before: Plan, now: Plan): boolean {
  const { id, revision, at, zone } = now
  const stamped: Plan = { ...before, id, revision, at, zone }
  return (Object.keys(now) as (keyof Plan)[]).every((part) => now[part] === stamped[part])
}

function failureOf(cause: unknown): Omit<NotKept, 'rolledBack'> {
  const detail = cause instanceof Error ? cause.message : String(cause)
  return { reason: failureReasonOf(cause), detail }
}
