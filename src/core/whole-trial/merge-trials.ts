import { mergeByField } from '@/core/trial/merge-by-field.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { compareTrials, type PartCounts, type RecordPart } from './compare-trials.ts'
import { planInForce } from './plan-in-force.ts'
import { standingBallots } from './standing-ballots.ts'
import type { WholeTrial } from './whole-trial.ts'

/** What could not be taken in, and stands as it stood here. */
export type MergeConflict =
  /** One id, two contents: the record here stays. */
  | { reason: 'changed-record'; part: RecordPart; id: string }
  /** Both began a session of this number: the other copy's session stays out with its log and ballots. */
  | { reason: 'session-number'; number: number }
  /** A taster answered about the same serving or set in both copies: the ballot here stands. */
  | { reason: 'ballot-twice'; tasterId: string; sessionId: string }
  /** Both changed this part of the plan differently: it stays as it is here. */
  | { reason: 'plan-field'; field: string }

export interface MergedTrial {
  whole: WholeTrial
  taken: PartCounts
  conflicts: MergeConflict[]
}

/**
 * Takes into the trial that stands here what only another copy of it has: append-only records by their ids, the plan in
 * force field by field against the latest revision that both copies hold. `newPlan` stamps a plan that came of both.
 */
export function mergeTrials(
  here: WholeTrial,
  there: WholeTrial,
  newPlan: (merged: Plan) => Plan,
): MergedTrial {
  const conflicts: MergeConflict[] = compareTrials(here, there).different.map((each) => ({
    reason: 'changed-record',
    ...each,
  }))
  const numbers = new Set(here.sessions.map(({ number }) => number))
  const newSessions = onlyIn(there.sessions, here.sessions)
  const barred = newSessions.filter(({ number }) => numbers.has(number))
  for (const { number } of barred) conflicts.push({ reason: 'session-number', number })
  const barredIds = new Set<string | null>(barred.map(({ id }) => id))
  const allowed = <Kept extends { id: string; sessionId: string | null }>(
    theirs: readonly Kept[],
    mine: readonly Kept[],
  ) => onlyIn(theirs, mine).filter(({ sessionId }) => !barredIds.has(sessionId))

  const ballots: WholeTrial['ballots'] = []
  // As they were sealed: a change is held against what it changes, whatever their ids.
  const inOrder = allowed(there.ballots, here.ballots).toSorted(
    (one, other) => one.at - other.at || one.count - other.count,
  )
  for (const ballot of inOrder) {
    const twin = standingBallots([...here.ballots, ...ballots], ballot)
    if (twin.length === 0 || twin.some(({ id }) => id === ballot.replaces)) ballots.push(ballot)
    else {
      const { tasterId, sessionId } = ballot
      conflicts.push({ reason: 'ballot-twice', tasterId, sessionId })
    }
  }
  const parts = {
    plans: onlyIn(there.plans, here.plans),
    sessions: newSessions.filter(({ id }) => !barredIds.has(id)),
    events: allowed(there.events, here.events),
    ballots,
    photos: onlyIn(there.photos, here.photos),
  }
  const plan = mergedPlan(here, there, newPlan, conflicts)
  const kitchen = [...here.kitchen, ...onlyIn(there.kitchen, here.kitchen)]
  const whole: WholeTrial = {
    trial: { ...here.trial, planId: plan.id },
    plans: withPlan([...here.plans, ...parts.plans], plan),
    sessions: [...here.sessions, ...parts.sessions],
    events: [...here.events, ...parts.events],
    ballots: [...here.ballots, ...parts.ballots],
    photos: [...here.photos, ...parts.photos],
    kitchen,
  }
  const taken = {
    ...{ plans: parts.plans.length, sessions: parts.sessions.length },
    ...{ events: parts.events.length, ballots: ballots.length, photos: parts.photos.length },
  }
  return { whole, taken, conflicts }
}

function onlyIn<Kept extends { id: string }>(
  from: readonly Kept[],
  known: readonly Kept[],
): Kept[] {
  const ids = new Set(known.map(({ id }) => id))
  return from.filter(({ id }) => !ids.has(id))
}

const withPlan = (plans: readonly Plan[], plan: Plan) =>
  plans.some(({ id }) => id === plan.id) ? [...plans] : [...plans, plan]

/** The plan in force after the merge: one copy's where only that one moved on, else both by field, as a new revision. */
function mergedPlan(
  here: WholeTrial,
  there: WholeTrial,
  newPlan: (merged: Plan) => Plan,
  conflicts: MergeConflict[],
): Plan {
  const [mine, theirs] = [planInForce(here), planInForce(there)]
  const known = new Set(here.plans.map(({ id }) => id))
  const shared = there.plans.filter(({ id }) => known.has(id))
  const base = here.plans
    .filter(({ id }) => shared.some((each) => each.id === id))
    .reduce<Plan | null>(
      (last, each) => (last && last.revision > each.revision ? last : each),
      null,
    )
  if (mine.id === theirs.id || theirs.id === base?.id) return mine
  if (mine.id === base?.id) return theirs
  const merged = mergeByField(base ?? mine, contentOf(theirs, mine), mine)
  for (const field of new Set(merged.conflicts.map((path) => path.split('/')[1] ?? '')))
    conflicts.push({ reason: 'plan-field', field })
  return newPlan(merged.value)
}

/** A plan with the identity of another, so that only what it says is compared. */
const contentOf = (plan: Plan, { id, trialId, revision, at, zone }: Plan): Plan => ({
  ...{ ...plan, id, trialId, revision, at, zone },
})
