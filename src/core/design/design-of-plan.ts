import { unitOf } from '@/core/trial/doughs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { writtenFirst } from '@/core/trial/written-first.ts'
import type { TrialDesign } from './detectable.ts'
import type { Spread } from './spread.ts'

/** A plan as the design whose power is asked: the margin is the main response's, a choice has no values. */
export function designOfPlan(
  plan: Pick<
    Plan,
    | 'levels'
    | 'factor'
    | 'doughs'
    | 'tasters'
    | 'flights'
    | 'plannedSessions'
    | 'responses'
    | 'mainResponseId'
    | 'writtenFirst'
  >,
  spread?: Spread,
): TrialDesign {
  const values = plan.levels.flatMap((level) => (level.value === null ? [] : [level.value]))
  const main = plan.responses.find((response) => response.id === plan.mainResponseId)
  return {
    levels: plan.levels.length,
    levelValues: values.length === plan.levels.length && new Set(values).size > 1 ? values : null,
    tasters: plan.tasters.length,
    flights: plan.flights,
    sessions: plan.plannedSessions,
    unit: unitOf(plan),
    margin: main?.margin ?? null,
    ...(spread ? { spread } : {}),
    looks: looksOf(plan),
  }
}

/** The most sessions, where findings are looked at before the last of them. */
export function looksOf(
  plan: Pick<Plan, 'plannedSessions' | 'writtenFirst'>,
): { most: number } | null {
  const { mostSessions, looks } = writtenFirst(plan)
  const most = Math.max(mostSessions ?? 0, plan.plannedSessions)
  return looks || plan.plannedSessions < most ? { most } : null
}
