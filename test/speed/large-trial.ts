import type { Taster } from '@/core/kitchen/kitchen-record.ts'
import { startingPlan } from '@/core/plan-edits/start/starting-plan.ts'
import { dealSession } from '@/core/session/deal-session.ts'
import type { Event } from '@/core/session/event-record.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Ballot } from '@/core/tasting/ballot-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { begun, minutes, zone } from '../trial-of/made-up-day.ts'

const trialId = 'large'
const counts = { levels: 12, tasters: 20, sessions: 6 }

/** Counts up, for ids and running numbers. */
function counter() {
  let count = 0
  return () => ++count
}

/** A made-up trial as large as a club might dare: 12 levels, 20 tasters, 6 sessions, every ballot in and every code open. */
export function largeTrial(): WholeTrial {
  const next = counter()
  const newId = () => `large-${String(next()).padStart(6, '0')}`
  const tasters = Array.from({ length: counts.tasters }, (_, at): Taster => {
    const [first, second] = [Math.floor(at / 5), at % 5].map((each) => 'ABCDE'[each])
    return { id: `taster-${at}`, kind: 'taster', initials: `${first}${second}` }
  })
  const start = startingPlan({ newId, at: begun, zone })
  const plan: Plan = {
    ...start,
    ...{ trialId, question: 'Which of twelve waters suits our loaf?' },
    plannedSessions: counts.sessions,
    levels: Array.from({ length: counts.levels }, (_, at) => {
      const value = 60 + 2 * at
      return { id: `level-${at}`, value, label: String(value), control: at === 3 }
    }),
    tasters: tasters.map(({ id }) => ({ tasterId: id, knows: false })),
    kitchenIds: [],
  }
  const sessions: Session[] = []
  for (let number = 1; number <= counts.sessions; number += 1) {
    const at = begun + number * 24 * 60 * minutes
    const dealt = dealSession({ plan, trialSeed: 7, number, earlier: sessions, at, zone, newId })
    if (!dealt.ok) throw new Error(dealt.reason)
    sessions.push(dealt.session)
  }
  const stamps = { count: counter(), id: newId }
  const parts = sessions.map((session) => tastedSession(plan, session, stamps))
  return {
    trial: { id: trialId, createdAt: begun, zone, planId: plan.id, seed: 7, revision: 1, note: '' },
    plans: [plan],
    sessions,
    events: parts.flatMap(({ events }) => events),
    ballots: parts.flatMap(({ ballots }) => ballots),
    photos: [],
    kitchen: tasters,
  }
}

/** All that was logged and sealed of one session. */
function tastedSession(
  plan: Plan,
  session: Session,
  { count, id }: { count: () => number; id: () => string },
): { events: Event[]; ballots: Ballot[] } {
  const stamp = () => {
    const running = count()
    const at = session.createdAt + running * 1000
    return { id: id(), trialId, sessionId: session.id, device: 'device-1', count: running, at }
  }
  const present = plan.tasters.map(
    ({ tasterId }): Event => ({
      ...{ ...stamp(), zone, kind: 'present', about: { kind: 'taster', id: tasterId } },
    }),
  )
  const served = session.dealt.servings.map(
    (serving): Event => ({
      ...{ ...stamp(), zone, kind: 'served', about: { kind: 'serving', id: serving.id } },
    }),
  )
  const asked = plan.responses.filter(({ by }) => by === 'taster')
  const ballots = session.dealt.tasterOrders.flatMap(({ tasterId, servingIds }) =>
    servingIds.map((servingId, place): Ballot => {
      const made = stamp()
      const answers = asked.map(({ id: responseId, scale }) => {
        const most = scale.kind === 'just-about-right' ? 5 : 9
        return { responseId, value: 1 + ((made.count * 7 + place * 3) % most) }
      })
      const about = { kind: 'serving', id: servingId } as const
      return { ...made, tasterId, startedAt: made.at - 500, about, answers }
    }),
  )
  const about = { kind: 'session', id: session.id } as const
  return { events: [...present, ...served, { ...stamp(), zone, kind: 'unsealed', about }], ballots }
}
