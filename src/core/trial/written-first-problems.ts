import type { PlanProblem } from './plan-problem.ts'
import type { Plan } from './plan-record.ts'
import { writtenFirst } from './written-first.ts'

/** What is wrong with what was written first: a hoped-for level that is gone, fewer sessions at most than planned, too many to look after each, no usual to compare with. */
export function writtenFirstProblems(plan: Plan): PlanProblem[] {
  const { hopedLevelId, mostSessions, looks, againstUsual } = writtenFirst(plan)
  const found: PlanProblem[] = []
  if (hopedLevelId !== null && !plan.levels.some(({ id }) => id === hopedLevelId))
    found.push({ path: '/writtenFirst/hopedLevelId', severity: 'stop', reason: 'hoped-level-gone' })
  if (mostSessions !== null && mostSessions < plan.plannedSessions) {
    const path = '/writtenFirst/mostSessions'
    const { plannedSessions } = plan
    found.push({ path, severity: 'stop', reason: 'most-below-planned', plannedSessions })
  }
  const most = mostSessions ?? plan.plannedSessions
  if (looks && most > mostSessionsLookedAt)
    found.push({
      path: '/writtenFirst/looks',
      severity: 'ask',
      reason: 'looks-too-many',
      most: mostSessionsLookedAt,
    })
  if (againstUsual && !plan.levels.some(({ control }) => control))
    found.push({ path: '/writtenFirst/againstUsual', severity: 'stop', reason: 'no-usual-level' })
  return found
}

/** With more sessions than this how clear each look has to be is known only nearly: the rule was worked out up to here. */
export const mostSessionsLookedAt = 8
