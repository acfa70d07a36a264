import type { DealtSession } from '@/core/session/deal-session.ts'

/** Why no session is dealt from a plan whose last change is not in the notebook. */
export const planNotKeptText =
  'The last change of the plan is not kept yet. Keep it first, by Try again at the head of this page.'

/** Why a session could not be dealt, with the mend. */
export function dealRefusal(refused: Extract<DealtSession, { ok: false }>): string {
  return refused.reason === 'needs-two-levels'
    ? 'A session compares two levels at least; add another.'
    : `It needs ${refused.asked} serving codes and only ${refused.left} three-digit codes are left. Plan fewer flights.`
}
