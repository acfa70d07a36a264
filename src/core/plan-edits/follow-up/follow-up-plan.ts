import { tellApartReach } from '@/core/design/tell-apart-reach.ts'
import {
  withoutWrittenFirst,
  withWrittenFirst,
} from '@/core/plan-edits/start/with-written-first.ts'
import { most } from '@/core/record/most.ts'
import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { undatedPlan } from '@/core/trial/undated-plan.ts'
import { followingQuestion } from './following-question.ts'

/**
 * The plan that confirms a winner: it and the control alone, the rest as before, with a triangle set of the two for every taster and as
 * many sessions as give the answers that show a difference in 8 of 10 such trials when half of the people tell them apart. Where
 * the winner is the control, the strongest other level stands against it. The question says what it follows.
 */
export function confirmingPlan(plan: Plan, winner: Level, rival: Level): Plan {
  const levels = plan.levels.filter(({ id }) => id === winner.id || id === rival.id)
  return {
    ...withoutWrittenFirst(plan),
    question: followingQuestion('Confirm', plan),
    expectation: null,
    ...confirmedBy(plan, [winner.id, rival.id]),
    levels: levels.some((level) => level.control)
      ? levels
      : levels.map((level) => ({ ...level, control: level.id === rival.id })),
  }
}

function confirmedBy(
  { tasters, plannedSessions }: Plan,
  levelIds: [string, string],
): Pick<Plan, 'tellApart' | 'plannedSessions'> {
  // Who bakes and tastes alone is dealt no sets: the levels are scored once more.
  if (tasters.length === 0) return { tellApart: null, plannedSessions }
  const tellApart = { test: 'triangle' as const, levelIds }
  const { enough = null } = tellApartReach({ tellApart, tasters, plannedSessions }) ?? {}
  const sessions = enough === null ? plannedSessions : Math.ceil(enough / tasters.length)
  return { tellApart, plannedSessions: Math.min(most.plannedSessions, Math.max(2, sessions)) }
}

/** The same plan on so many evenings of a trial of its own; how often it may be looked at is written anew. */
export function repeatingPlan(plan: Plan, evenings: number): Plan {
  const next = {
    ...plan,
    question: followingQuestion('Repeat', plan),
    plannedSessions: evenings,
  }
  return withWrittenFirst(next, { mostSessions: null, looks: false })
}

interface Start {
  newId: () => string
  at: number
  zone: string
}

/** A plan as the first of a trial that follows: under its own identity, with nothing accepted yet. */
export function followingPlan(plan: Plan, { newId, at, zone }: Start): Plan {
  return { ...undatedPlan(plan), id: newId(), trialId: newId(), at, zone, accepted: [] }
}
