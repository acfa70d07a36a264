import { piecesAsked } from './pieces-asked.ts'
import type { PlanProblem } from './plan-problem.ts'
import type { Plan } from './plan-record.ts'
import { levelsServedAgain } from './served-at-table.ts'

/** As many three-digit serving codes as one trial can have, none another's swap of two neighbouring digits. */
export const mostCodes = 495

/** Samples of one tell-apart set, by its test. */
export const samplesOf = { triangle: 3, 'duo-trio': 3, paired: 2 } as const

/** How many codes the tell-apart test of a plan takes: one set a taster, one code a sample. */
export function codesOfSets(plan: Pick<Plan, 'tellApart' | 'tasters'>): number {
  return plan.tellApart ? samplesOf[plan.tellApart.test] * plan.tasters.length : 0
}

/** How many codes one session takes: a code for every counted piece and the warm-up piece, one
 * more for each level served again, and those of the tell-apart sets. */
export function codesAsked(plan: Plan): number {
  const { counted, warmUp } = piecesAsked(plan)
  return counted + warmUp + levelsServedAgain(plan).length + codesOfSets(plan)
}

/** Codes that would run out before the last planned session, said while the plan can still be changed. */
export function codeProblems(plan: Plan): PlanProblem[] {
  const asked = codesAsked(plan)
  const { plannedSessions } = plan
  if (asked * plannedSessions <= mostCodes) return []
  const lastFor = Math.floor(mostCodes / asked)
  return [
    { path: '/flights', severity: 'ask', reason: 'codes-run-out', asked, plannedSessions, lastFor },
  ]
}
