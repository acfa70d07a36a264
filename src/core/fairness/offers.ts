import { lockedChanges } from '@/core/seal/locked-change.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { applyRemedy } from './apply-remedy.ts'
import { isPress, type Remedy } from './remedy.ts'

/** What can be done with the remedies of an item, on a plan as it stands. */
export interface Offers {
  /** Applied by one press. */
  presses: Remedy[]
  /** Refused by the lock here; one press takes them into a trial that follows. */
  inFollowUp: Remedy[]
  advice: Remedy[]
}

/** The remedies that are open: none that the plan has followed already, and none as a press that its lock forbids. */
export function offersOf(remedies: readonly Remedy[], plan: Plan, locked: boolean): Offers {
  const now = JSON.stringify(plan)
  const offers: Offers = { presses: [], inFollowUp: [], advice: [] }
  for (const remedy of remedies) {
    if (!isPress(remedy)) {
      offers.advice.push(remedy)
      continue
    }
    const next = applyRemedy(plan, remedy)
    if (JSON.stringify(next) === now) continue
    const refused = locked && lockedChanges(plan, next).length > 0
    offers[refused ? 'inFollowUp' : 'presses'].push(remedy)
  }
  return offers
}
