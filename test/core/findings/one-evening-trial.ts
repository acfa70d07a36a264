import type { Event } from '@/core/session/event-record.ts'
import type { Ballot } from '@/core/tasting/ballot-record.ts'
import { tasterOrder } from '@/core/tasting/taster-order.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { tastingTrial } from '../../journeys/tasting-trial.ts'
import { begun, zone } from '../../trial-of/made-up-day.ts'

const levels = [52, 56, 60].map((value, at) => ({
  id: `level-${at + 1}`,
  value,
  label: String(value),
  control: at === 1,
}))

const hour = 3_600_000

/** One evening of one baker alone, every serving scored by its level and the codes opened. Invented. */
export function oneEveningTrial(
  liking: Readonly<Record<number, number>>,
  change: Partial<Plan> = {},
): WholeTrial {
  const whole = tastingTrial({
    ...{ question: 'How wet should my bagel be?', levels, flights: 2, plannedSessions: 1 },
    ...{ tasters: [{ tasterId: 'club-1', knows: false }], atTable: {} },
    ...change,
  })
  const [session] = whole.sessions
  const [plan] = whole.plans
  if (!session || !plan) throw new Error('a plan and a session')
  const by = { trialId: 'trial-1', sessionId: session.id, device: 'device-1', zone }
  const ballots = tasterOrder(session, 'club-1').map((serving, at): Ballot => {
    const piece = session.pieces.find(({ id }) => id === serving.pieceId)
    const level = plan.levels.find(({ id }) => id === piece?.levelId)
    const value = liking[level?.value ?? 0] ?? null
    const { zone: _, ...own } = by
    return {
      ...own,
      ...{ id: `ballot-${at}`, tasterId: 'club-1', count: at, at: begun + 6 * hour + at },
      about: { kind: 'serving', id: serving.id },
      answers: plan.responses
        .filter((response) => response.by === 'taster')
        .map(({ id }) => ({ responseId: id, value })),
    }
  })
  const unsealed: Event = {
    ...by,
    ...{ id: 'event-unsealed', count: 1, at: begun + 7 * hour, kind: 'unsealed' },
    about: { kind: 'session', id: session.id },
  }
  return { ...whole, ballots, events: [unsealed] }
}
