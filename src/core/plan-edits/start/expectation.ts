import type { Expectation } from '@/core/trial/expectation.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/** The plan with what is expected changed; where nothing makes a difference there is no best level to bet on. */
export function withExpectation(plan: Plan, next: Partial<Expectation>): Plan {
  const before = plan.expectation ?? { direction: 'rises', bestGuess: null }
  const bet = next.direction === 'no-difference' ? { bestGuess: null } : {}
  return { ...plan, expectation: { ...before, ...next, ...bet } }
}
