import { keptAnswer } from '@/core/record/kept-answer.ts'
import type { About } from '@/core/session/event-record.ts'
import { idsOf } from './references.ts'
import type { WholeTrial } from './whole-trial.ts'

/** What an entry of the log or a ballot may name. */
export type Named =
  | About['kind']
  | 'ranking'
  | 'code'
  | 'ingredient'
  | 'preferment'
  | 'response'
  | 'photo'

/** What there is to name in a session, or in all of them; `sessions` is how many these are. */
export interface NamedWithin {
  sessions: number
  ids: (named: Named) => ReadonlySet<string>
}

/** What entries of one session may name, those of no session (null) whatever the trial has; looked up once for all entries. */
export const namedWithin = keptAnswer(
  (whole: WholeTrial, sessionId: string | null): NamedWithin => {
    const sessions = whole.sessions.filter((one) => sessionId === null || one.id === sessionId)
    const plans = whole.plans.filter(
      (plan) => sessionId === null || sessions.some((session) => session.planId === plan.id),
    )
    const records: Record<Named, () => readonly { id: string }[]> = {
      trial: () => [whole.trial],
      session: () => sessions,
      // A session has one ranking, which goes by its id.
      ranking: () => sessions,
      batch: () => sessions.flatMap((session) => session.batches),
      piece: () => sessions.flatMap((session) => session.pieces),
      serving: () => sessions.flatMap((session) => session.dealt.servings),
      code: () =>
        sessions.flatMap((session) => session.dealt.servings.map(({ code }) => ({ id: code }))),
      set: () => sessions.flatMap((session) => session.dealt.sets),
      step: () => plans.flatMap((plan) => plan.steps),
      taster: () => whole.kitchen.filter((thing) => thing.kind === 'taster'),
      // A ripe starter is weighed whole, under its preferment's id.
      ingredient: () =>
        plans.flatMap(({ formula }) => [...formula.ingredients, ...formula.preferments]),
      preferment: () => plans.flatMap(({ formula }) => formula.preferments),
      response: () => plans.flatMap((plan) => plan.responses),
      photo: () => whole.photos,
    }
    const known = new Map<Named, ReadonlySet<string>>()
    const ids = (named: Named) => {
      const found = known.get(named) ?? idsOf(records[named]())
      known.set(named, found)
      return found
    }
    return { sessions: sessions.length, ids }
  },
)
