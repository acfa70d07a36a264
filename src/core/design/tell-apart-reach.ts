import {
  answersNeeded,
  fewestCorrect,
  tellApartPower,
} from '@/core/statistics/discrimination/panel-size.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { tellApartStatistics } from './tell-apart-statistics.ts'

/** Share of people supposed to tell the two levels apart, while nobody knows: a clear difference (common practice, no source). */
const supposedShare = 0.5
const alpha = 0.05

export type SetsAsked = Pick<Plan, 'tellApart' | 'tasters' | 'plannedSessions'>

/** What the tell-apart sets of a plan could show. */
export interface TellApartReach {
  /** One for each taster in each planned session. */
  answers: number
  /** The fewest right ones that are significant at 5 %; null where even all of them are not. */
  needed: number | null
  /** Chance of so many right ones, 0 to 1, when half of the people tell the levels apart and the others guess. */
  power: number
  /** Answers from which that chance is 0.8 or more. */
  enough: number | null
}

/** What the planned tell-apart test could show; null where none is planned, or for nobody. */
export function tellApartReach(plan: SetsAsked): TellApartReach | null {
  const answers = plan.tasters.length * plan.plannedSessions
  if (!plan.tellApart || answers === 0) return null
  const { test, sides } = tellApartStatistics[plan.tellApart.test]
  const fewest = fewestCorrect(test, answers, alpha, sides)
  const enough = answersNeeded(test, supposedShare, { alpha, sides })
  return {
    answers,
    needed: fewest.ok ? fewest.correct : null,
    power: tellApartPower(test, answers, supposedShare, alpha, sides),
    enough: enough.ok ? enough.alwaysFrom : null,
  }
}
