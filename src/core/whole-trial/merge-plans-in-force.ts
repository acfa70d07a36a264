import { most } from '@/core/record/most.ts'
import { saysSame } from '@/core/record/says-same.ts'
import { locked } from '@/core/seal/lock.ts'
import { lockedChanges } from '@/core/seal/locked-change.ts'
import { withLocked } from '@/core/seal/with-locked.ts'
import { mergeByField } from '@/core/trial/merge-by-field.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Copy, MergeConflict } from './merge-conflict.ts'
import { planInForce } from './plan-in-force.ts'
import type { WholeTrial } from './whole-trial.ts'

/** The plan in force of two copies, whether it is a revision that neither has, and what of it did not come in. */
interface InForce {
  plan: Plan
  isNew: boolean
  conflicts: MergeConflict[]
}

/** The heads of two copies, and the latest revision that both hold. */
interface Heads {
  base: Plan | null
  mine: Plan
  theirs: Plan
}

/**
 * The plan in force after two copies of a trial were brought together: one copy's where only that one moved on, else both by
 * field. What the lock of either copy fixes stands as that copy wrote it, whatever was written in the other since; `together`
 * is what was done in both, since an undo there may lift a lock here.
 */
export function mergePlansInForce(
  here: WholeTrial,
  there: WholeTrial,
  together: WholeTrial,
): InForce {
  const heads = headsOf(here, there)
  const free = byField(heads)
  const as = lockingCopy(here, there, together)
  if (as === null) return free
  const fixed = as === 'here' ? heads.mine : heads.theirs
  const parts = lockedChanges(fixed, free.plan)
  if (parts.length === 0) return free
  const { base, mine, theirs } = heads
  const lawful = byField({
    base: base && withLocked(fixed, base),
    mine: withLocked(fixed, mine),
    theirs: withLocked(fixed, theirs),
  })
  const conflicts: MergeConflict[] = parts.map((part) => ({ reason: 'plan-locked', part, as }))
  if (!holds(lawful.plan))
    return { plan: fixed, isNew: false, conflicts: [...conflicts, { reason: 'plan-stands', as }] }
  conflicts.push(...lawful.conflicts)
  const standing = [mine, theirs].find((head) => saysSame(contentOf(lawful.plan, head), head))
  return { plan: standing ?? lawful.plan, isNew: standing === undefined, conflicts }
}

/** The copy whose lock stands; that of the one here where both are locked. */
function lockingCopy(here: WholeTrial, there: WholeTrial, together: WholeTrial): Copy | null {
  if (!locked(together)) return null
  if (locked(here)) return 'here'
  return locked(there) ? 'there' : null
}

function headsOf(here: WholeTrial, there: WholeTrial): Heads {
  const theirIds = new Set(there.plans.map(({ id }) => id))
  const base = here.plans
    .filter(({ id }) => theirIds.has(id))
    .reduce<Plan | null>(
      (last, each) => (last && last.revision > each.revision ? last : each),
      null,
    )
  return { base, mine: planInForce(here), theirs: planInForce(there) }
}

function byField({ base, mine, theirs }: Heads): InForce {
  if (mine.id === theirs.id || theirs.id === base?.id)
    return { plan: mine, isNew: false, conflicts: [] }
  if (mine.id === base?.id) return { plan: theirs, isNew: false, conflicts: [] }
  const { value, conflicts } = mergeByField(base ?? mine, contentOf(theirs, mine), mine)
  const fields = new Set(conflicts.map((path) => path.split('/')[1] ?? ''))
  return {
    plan: value,
    isNew: true,
    conflicts: [...fields].map((field) => ({ reason: 'plan-field', field })),
  }
}

/** Whether what was put back has its place in the plan: the level hoped for is there, and room for the main response. */
function holds({ writtenFirst, levels, responses }: Plan): boolean {
  const hoped = writtenFirst?.hopedLevelId ?? null
  const hopedIsThere = hoped === null || levels.some(({ id }) => id === hoped)
  return hopedIsThere && responses.length <= most.responses
}

/** A plan with the identity of another, so that only what it says is compared. */
const contentOf = (plan: Plan, { id, trialId, revision, at, zone }: Plan): Plan => ({
  ...{ ...plan, id, trialId, revision, at, zone },
})
