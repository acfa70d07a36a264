import { dealSession } from '@/core/session/deal-session.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

interface Dealing {
  plan: Plan
  trialSeed: number
  earlier: readonly Session[]
  at: number
  newId: () => string
}

/** The draw of the day on which the samples were baked. */
const drawVersion = 4

/** The next session of a sample, dealt as the app dealt it then. */
export function dealt({ plan, trialSeed, earlier, at, newId }: Dealing): Session {
  const outcome = dealSession({
    plan,
    trialSeed,
    number: earlier.length + 1,
    earlier: [...earlier],
    at,
    zone: plan.zone,
    newId,
    drawVersion,
  })
  if (!outcome.ok) throw new Error(`the sample cannot be dealt: ${outcome.reason}`)
  return outcome.session
}
