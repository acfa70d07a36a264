import type { Plan } from '@/core/trial/plan-record.ts'
import { type DealtSession, dealSession } from './deal-session.ts'
import type { Session } from './session-record.ts'

/**
 * The planned sessions as they would be dealt, before any is begun: what the fairness check reads its orders from. Ids are
 * made up, and codes and letters must not be shown: sessions already begun are taken as they are. Answers why when the deal
 * is refused.
 */
export function previewSessions(
  plan: Plan,
  trialSeed: number,
  begun: readonly Session[] = [],
): { ok: true; sessions: Session[] } | Exclude<DealtSession, { ok: true }> {
  const sessions = begun.toSorted((one, other) => one.number - other.number)
  const planned = sessions[0]?.plannedSessions ?? plan.plannedSessions
  let made = 0
  const newId = () => {
    made += 1
    return `preview-${made}`
  }
  for (let number = sessions.length + 1; number <= planned; number += 1) {
    const dealt = dealSession({
      plan,
      trialSeed,
      number,
      earlier: sessions,
      at: plan.at,
      zone: plan.zone,
      newId,
    })
    if (!dealt.ok) return dealt
    sessions.push(dealt.session)
  }
  return { ok: true, sessions }
}

/**
 * The next session as it would be dealt, not yet begun: whose day the plan's page states. Under the same cautions as
 * `previewSessions`.
 */
export function previewNextSession(
  plan: Plan,
  trialSeed: number,
  begun: readonly Session[],
): DealtSession {
  let made = 0
  const newId = () => {
    made += 1
    return `preview-${made}`
  }
  const earlier = begun.toSorted((one, other) => one.number - other.number)
  const number = (earlier.at(-1)?.number ?? 0) + 1
  return dealSession({
    ...{ plan, trialSeed, number, earlier, at: plan.at, zone: plan.zone, newId },
  })
}
