import type { Plan } from '@/core/trial/plan-record.ts'
import type { Response } from '@/core/trial/response.ts'

/**
 * A plan with every part that the lock fixes as the locked one wrote it; what that one left open (a main response, a margin)
 * is the plan's own. Whatever the plan is, `lockedChanges` then finds nothing.
 */
export function withLocked(locked: Plan, { writtenFirst: _, ...plan }: Plan): Plan {
  const main = locked.responses.find(({ id }) => id === locked.mainResponseId)
  return {
    ...plan,
    expectation: locked.expectation,
    ...(locked.writtenFirst ? { writtenFirst: locked.writtenFirst } : {}),
    plannedSessions: locked.plannedSessions,
    ...(main ? { mainResponseId: main.id, responses: withMain(plan.responses, main) } : {}),
  }
}

function withMain(responses: readonly Response[], main: Response): Response[] {
  const { better, margin } = main
  return responses.some(({ id }) => id === main.id)
    ? responses.map((each) =>
        each.id === main.id ? { ...each, better, margin: margin ?? each.margin } : each,
      )
    : [main, ...responses]
}
