import type { BlindView } from '@/core/seal/blind/blind-view.ts'
import { samplesAtEnd } from '@/core/seal/blind/samples-at-end.ts'
import type { Serving, Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { onShuffledPlates } from '@/core/trial/served-at-table.ts'
import { effectiveBallots } from './effective-ballots.ts'
import { guessAsked } from './guess-asked.ts'
import { asksLiking, tasterQuestions } from './taster-questions.ts'
import { planIn, sessionIn, type TastingRecords } from './tasting-records.ts'
import { type Awaited, tastingState } from './tasting-state.ts'
import { roundsAtTable } from './to-turn.ts'

/**
 * The blind view of one taster of a session, as it stands. Positions count from 1 and skip what was not served. A code leads
 * back to its serving only by `servingByCode`, a set only by `setByCodes`, and neither is at hand on a taster's page.
 */
export function blindView(records: TastingRecords, sessionId: string, tasterId: string): BlindView {
  const session = sessionIn(records, sessionId)
  const plan = planIn(records, session)
  const state = tastingState(records, sessionId)
  const plateOf = new Map(
    roundsAtTable(records, sessionId, tasterId).flatMap(({ plates }) =>
      plates.map(({ key, plate }) => [key, plate] as const),
    ),
  )
  const taster = state.tasters.find((one) => one.tasterId === tasterId)
  const asked = taster?.asked ?? []
  const open = new Set(taster?.missing.map(({ about }) => `${about.kind} ${about.id}`))
  const warmUp = session.dealt.servings.find((serving) => serving.flightId === null)
  const own = effectiveBallots(records.ballots, sessionId).filter(
    (ballot) => ballot.tasterId === tasterId,
  )
  const sealedOf = (servingId: string) => {
    const ballot = own.find(({ about }) => about.kind === 'serving' && about.id === servingId)
    return ballot
      ? {
          answers: ballot.answers,
          startedAt: ballot.startedAt ?? null,
          words: ballot.words ?? null,
        }
      : null
  }
  const isOpen = (about: Awaited['about']) => open.has(`${about.kind} ${about.id}`)
  const servings = asked.flatMap(({ about, codes, position }) =>
    position === null
      ? []
      : [
          {
            ...{ code: codes.join(), position, done: !isOpen(about) },
            sealed: sealedOf(about.id),
            ...onPlate(plateOf.get(about.id)),
            ...inFlight(session, about.id),
          },
        ],
  )
  const ranking = asked.find(({ about }) => about.kind === 'ranking')
  return {
    sessionNumber: session.number,
    servings,
    nextCode: taster?.missing.find(({ about }) => about.kind === 'serving')?.codes.join() ?? null,
    warmUpCode: warmUp?.code ?? null,
    warmUpAtSeat: warmUp !== undefined && plan.serving === 'rested',
    sets: asked.flatMap(({ about, codes }) =>
      about.kind === 'set'
        ? [
            {
              codes,
              offered: plan.tellApart?.test === 'duo-trio' ? codes.slice(1) : codes,
              done: !isOpen(about),
              ...(onShuffledPlates(plan) ? { onPlates: true } : {}),
            },
          ]
        : [],
    ),
    tellApart: plan.tellApart && askedApart(plan.tellApart),
    questions: tasterQuestions(plan).map((response) => ({
      responseId: response.id,
      name: response.name,
      scale: response.scale,
      definition: response.definition ?? null,
      liking: asksLiking(response),
    })),
    rest: restOf(plan.atTable),
    ranking:
      ranking && plan.atTable?.ranking
        ? {
            ...plan.atTable.ranking,
            codes: samplesAtEnd(servings).map(({ code }) => code),
            done: !isOpen(ranking.about),
          }
        : null,
    guess: guessOf(plan, asked, isOpen),
    complete: taster?.complete ?? true,
  }
}

function restOf(atTable: Plan['atTable']): BlindView['rest'] {
  const { restSeconds, pauseAfter, pauseSeconds } = atTable ?? {}
  return {
    ...(restSeconds === undefined ? {} : { restSeconds }),
    ...(pauseAfter === undefined ? {} : { pauseAfter }),
    ...(pauseSeconds === undefined ? {} : { pauseSeconds }),
  }
}

const onPlate = (plate: number | undefined) => (plate === undefined ? {} : { plate })

/** The number of a serving's flight, where there are several: its place in the tasting, nothing of what it is. */
function inFlight({ dealt }: Session, servingId: string): { flight?: number } {
  if (dealt.flights.length < 2) return {}
  const flightId = dealt.servings.find(({ id }) => id === servingId)?.flightId
  const flight = dealt.flights.find(({ id }) => id === flightId)
  return flight ? { flight: flight.number } : {}
}

function guessOf(
  plan: Plan,
  asked: readonly Awaited[],
  isOpen: (about: Awaited['about']) => boolean,
): BlindView['guess'] {
  const guess = asked.find(({ about }) => about.kind === 'session')
  if (!guess) return null
  const {
    name: factorName,
    acts: { on: factorKind },
  } = plan.factor
  return {
    done: !isOpen(guess.about),
    ...(guessAsked(plan) === 'most' ? { most: { factorName, factorKind } } : {}),
  }
}

/** Of a test to tell apart what its taster may know: never which levels are told apart. */
function askedApart({ test, attribute, asks }: NonNullable<BlindView['tellApart']>) {
  return {
    test,
    ...(attribute === undefined ? {} : { attribute }),
    ...(asks === undefined ? {} : { asks }),
  }
}

/** The serving under a code; null for a code that is not out in this session. */
export function servingByCode(session: Session, code: string): Serving | null {
  return session.dealt.servings.find((serving) => serving.code === code) ?? null
}

/** A taster's set by its codes in their order; null when none was dealt to them. */
export function setByCodes(session: Session, tasterId: string, codes: readonly string[]) {
  return (
    session.dealt.sets.find(
      (set) =>
        set.tasterId === tasterId && set.samples.map(({ code }) => code).join() === codes.join(),
    ) ?? null
  )
}
