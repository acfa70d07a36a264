import { dealSession } from '@/core/session/deal-session.ts'
import type { Piece, Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { countedIds, madePlan } from '../made-plan.ts'

/** The first session of a made plan, dealt from a fixed seed, under the id session-a. */
export function madeSession(plan: Plan = madePlan(), earlier: Session[] = [], seed = 42): Session {
  const number = earlier.length + 1
  const dealt = dealSession({
    plan,
    trialSeed: seed,
    number,
    earlier,
    at: 2_000,
    zone: 'Europe/Zurich',
    newId: countedIds(`s${number}`),
  })
  if (!dealt.ok) throw new Error(dealt.reason)
  return { ...dealt.session, id: number === 1 ? 'session-a' : `session-${number}` }
}

/** The item at an index, which a test knows to be there. */
export function nth<Item>(items: readonly Item[], index: number): Item {
  const item = items[index]
  if (item === undefined) throw new Error(`nothing at ${index}`)
  return item
}

/** The piece of a level in a flight (counted from 0). */
export function pieceAt(session: Session, levelId: string, flight = 0): Piece {
  const flightId = nth(session.dealt.flights, flight).id
  const piece = session.pieces.find((one) => one.flightId === flightId && one.levelId === levelId)
  if (!piece) throw new Error(`no piece of ${levelId}`)
  return piece
}
