import { isAnswered } from '@/core/seal/blind/check-answers.ts'
import { type Seal, sealOf } from '@/core/seal/sealed.ts'
import { asTheyCome } from '@/core/session/as-they-come.ts'
import { eventsOfSession } from '@/core/session/effective-events.ts'
import { notServed } from '@/core/session/failures.ts'
import type { Serving, Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Ballot } from './ballot-record.ts'
import { effectiveBallots } from './effective-ballots.ts'
import { guessAsked } from './guess-asked.ts'
import { servedInOrder, tasterOrder } from './taster-order.ts'
import { tasterQuestions } from './taster-questions.ts'
import { type SessionTaster, tastersOfSession } from './tasters-of-session.ts'
import { planIn, sessionIn, type TastingRecords } from './tasting-records.ts'

/** A ballot to be filled in: the code (of a set, its codes) and what it is about. */
export interface Awaited {
  tasterId: string
  codes: string[]
  about: Ballot['about']
  /** Position among the servings that really came to the taster, from 1; null for a set and for the question at the end. */
  position: number | null
}

export interface TasterState extends SessionTaster {
  /** Everything offered to this taster that counts, in their order; then the ranking, the tell-apart sets, the guess last. */
  asked: Awaited[]
  /** Ballots expected of this taster, and how many of them are in. */
  expected: number
  answered: number
  missing: Awaited[]
  next: Awaited | null
  complete: boolean
}

export interface TastingState {
  sessionId: string
  seal: Seal
  closedBecause: string | null
  begun: boolean
  /** Every ballot expected is in, of at least one taster, and nobody is awaited any more. */
  complete: boolean
  tasters: TasterState[]
  missing: Awaited[]
  /** Pieces whose servings nobody is expected to score. */
  notServed: string[]
  mayUnseal:
    | { ok: true }
    | { ok: false; reason: 'not-begun' | 'ballots-missing' | 'tasters-awaited'; missing: number }
}

/**
 * Where a session's tasting stands: expected are the ballots of the tasters present for every counted serving that did not
 * fail, and for their tell-apart set. Who left is expected nothing more. Codes may be unsealed when every ballot is in and
 * everybody planned has come or was marked as not tasting, or when the tasting was closed with a reason.
 */
export function tastingState(records: TastingRecords, sessionId: string): TastingState {
  const session = sessionIn(records, sessionId)
  const plan = planIn(records, session)
  const effective = eventsOfSession(records.events, sessionId)
  const ballots = effectiveBallots(records.ballots, sessionId)
  const people = tastersOfSession(session, plan, effective, ballots)
  const late = people.filter((taster) => taster.late).map((taster) => taster.tasterId)
  const lost = notServed(session, effective)
  const tasters = people.map((taster) =>
    stateOf(taster, {
      asked: askedOf(
        session,
        taster.tasterId,
        asTheyCome(
          servedInOrder(tasterOrder(session, taster.tasterId, late), lost),
          plan,
          effective,
        ),
        { ranking: plan.atTable?.ranking !== undefined, guess: guessAsked(plan) !== null },
      ),
      done: doneBy(taster.tasterId, ballots, plan),
    }),
  )
  const missing = tasters
    .filter((taster) => taster.presence === 'present')
    .flatMap((taster) => taster.missing)
  const begun = ballots.length > 0 || effective.some((event) => event.kind === 'served')
  const awaited = tasters.some((taster) => taster.presence === 'awaited')
  const answered = tasters.some((taster) => taster.answered > 0)
  const complete = missing.length === 0 && !awaited && answered
  const closed = effective.findLast((event) => event.kind === 'tasting-closed')
  return {
    sessionId,
    seal: sealOf(records, sessionId),
    closedBecause: closed?.reason ?? null,
    begun,
    complete,
    tasters,
    missing,
    notServed: [...lost],
    mayUnseal: mayUnseal(begun, complete || closed !== undefined, missing.length),
  }
}

function askedOf(
  session: Session,
  tasterId: string,
  served: readonly Serving[],
  asks: { ranking: boolean; guess: boolean },
): Awaited[] {
  const servings = served.map(
    (serving, index): Awaited => ({
      tasterId,
      codes: [serving.code],
      about: { kind: 'serving', id: serving.id },
      position: index + 1,
    }),
  )
  const sets = session.dealt.sets
    .filter((set) => set.tasterId === tasterId)
    .map((set): Awaited => {
      const codes = set.samples.map((sample) => sample.code)
      return { tasterId, codes, about: { kind: 'set', id: set.id }, position: null }
    })
  const ofSession = (kind: 'ranking' | 'session', asked: boolean): Awaited[] =>
    asked ? [{ tasterId, codes: [], about: { kind, id: session.id }, position: null }] : []
  return [
    ...servings,
    ...ofSession('ranking', asks.ranking && servings.length > 1),
    ...sets,
    ...ofSession('session', asks.guess && servings.length > 0),
  ]
}

function doneBy(tasterId: string, ballots: readonly Ballot[], plan: Plan): Set<string> {
  const questions = tasterQuestions(plan).map(({ id }) => id)
  return new Set(
    ballots
      .filter((ballot) => ballot.tasterId === tasterId)
      .filter(
        ({ about, answers, pickedCode, ranked }) =>
          about.kind === 'session' ||
          (about.kind === 'ranking'
            ? ranked !== undefined
            : about.kind === 'set'
              ? pickedCode !== undefined
              : isAnswered(answers, questions)),
      )
      .map(({ about }) => `${about.kind} ${about.id}`),
  )
}

function stateOf(
  taster: SessionTaster,
  { asked, done }: { asked: Awaited[]; done: Set<string> },
): TasterState {
  const isDone = ({ about }: Awaited) => done.has(`${about.kind} ${about.id}`)
  const answered = asked.filter(isDone)
  const open = asked.filter((each) => !isDone(each))
  const stays = taster.presence === 'present' || taster.presence === 'awaited'
  const missing = stays ? open : []
  return {
    ...taster,
    asked,
    expected: stays ? asked.length : answered.length,
    answered: answered.length,
    missing,
    next: missing[0] ?? null,
    complete: missing.length === 0,
  }
}

function mayUnseal(begun: boolean, done: boolean, missing: number): TastingState['mayUnseal'] {
  if (done) return { ok: true }
  if (!begun) return { ok: false, reason: 'not-begun', missing }
  return { ok: false, reason: missing > 0 ? 'ballots-missing' : 'tasters-awaited', missing }
}
