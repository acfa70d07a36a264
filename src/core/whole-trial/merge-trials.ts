import type { Plan } from '@/core/trial/plan-record.ts'
import { compareTrials, type PartCounts } from './compare-trials.ts'
import type { MergeConflict } from './merge-conflict.ts'
import { mergePlansInForce } from './merge-plans-in-force.ts'
import { standingBallots } from './standing-ballots.ts'
import type { WholeTrial } from './whole-trial.ts'

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
  const together: WholeTrial = {
    trial: here.trial,
    plans: [...here.plans, ...parts.plans],
    sessions: [...here.sessions, ...parts.sessions],
    events: [...here.events, ...parts.events],
    ballots: [...here.ballots, ...parts.ballots],
    photos: [...here.photos, ...parts.photos],
    kitchen: [...here.kitchen, ...onlyIn(there.kitchen, here.kitchen)],
  }
  const inForce = mergePlansInForce(here, there, together)
  conflicts.push(...inForce.conflicts)
  const plan = inForce.isNew ? newPlan(inForce.plan) : inForce.plan
  const whole: WholeTrial = {
    ...together,
    trial: { ...here.trial, planId: plan.id },
    plans: inForce.isNew ? [...together.plans, plan] : together.plans,
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
