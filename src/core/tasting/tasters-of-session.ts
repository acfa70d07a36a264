import type { Standing } from '@/core/session/effective-events.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Ballot } from './ballot-record.ts'

export interface SessionTaster {
  tasterId: string
  /** `awaited`: planned, neither come nor declined. Who has sealed a ballot is present. */
  presence: 'awaited' | 'present' | 'declined' | 'left'
  /** Knows which is which: by the plan, or because they looked. */
  knows: boolean
  /** Not among those the session was dealt for. */
  late: boolean
}

/**
 * Everybody who may taste in a session: those it was dealt for, those the plan names, and whoever was marked present or sealed
 * a ballot, with whether they came, declined or left. The last word of the log counts.
 */
export function tastersOfSession(
  session: Session,
  plan: Pick<Plan, 'tasters'>,
  effective: readonly Standing[],
  ballots: readonly Ballot[],
): SessionTaster[] {
  const dealt = session.dealt.tasterOrders.map((order) => order.tasterId)
  const came = effective.filter((event) => event.kind === 'present').map((event) => event.about.id)
  const ids = new Set([
    ...dealt,
    ...plan.tasters.map((taster) => taster.tasterId),
    ...came,
    ...ballots.map((ballot) => ballot.tasterId),
  ])
  return [...ids].map((tasterId) => {
    const about = effective.filter((event) => event.about.id === tasterId)
    const word = about.findLast((event) => ['present', 'declined', 'left'].includes(event.kind))
    const peeked = about.some((event) => event.kind === 'peeked')
    const planned = plan.tasters.find((taster) => taster.tasterId === tasterId)
    return {
      tasterId,
      presence: presenceOf(
        word?.kind,
        ballots.some((ballot) => ballot.tasterId === tasterId),
      ),
      knows: peeked || (planned?.knows ?? false),
      late: !dealt.includes(tasterId),
    }
  })
}

function presenceOf(word: string | undefined, sealed: boolean): SessionTaster['presence'] {
  if (word === 'present' || word === 'declined' || word === 'left') return word
  return sealed ? 'present' : 'awaited'
}
