import type { Session } from '@/core/session/session-record.ts'
import type { Ballot } from '@/core/tasting/ballot-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Response } from '@/core/trial/response.ts'
import { type EventLog, sampleDevice } from './event-maker.ts'

/** What a taster would score at a level, before the noise of the single answer, by the response's name. */
export type TasteTruth = Record<string, (level: number) => number>

export interface Spreads {
  taster: number
  tasterLevel: number
  batch: number
  residual: number
}

interface TastingHour {
  plan: Plan
  session: Session
  log: EventLog
  newId: () => string
  truth: TasteTruth
  spreads: Spreads
  /** Draws that stay the same in every session: what each taster is like. */
  panel: (tasterId: string, levelId: string, response: string) => number
  noise: (sd: number) => number
  startAt: number
}

const secondsPerServing = 150

/** Everyone at the table at once, each in their own order; answers from the truth and its spreads, on whole points. */
export function tastingHour(hour: TastingHour): Ballot[] {
  const { plan, session, log, noise, spreads, startAt } = hour
  const questions = plan.responses.filter(({ by }) => by === 'taster')
  const ofBatch = new Map(
    session.batches.map(({ id }) => [id, questions.map(() => noise(spreads.batch))]),
  )
  const ballots: Ballot[] = []
  for (const { tasterId } of session.dealt.tasterOrders) {
    log.write(session.id, { kind: 'present', about: { kind: 'taster', id: tasterId }, at: startAt })
  }
  const seats = session.dealt.tasterOrders.flatMap(({ tasterId, servingIds }, seat) =>
    servingIds.map((servingId, position) => ({ tasterId, servingId, position, seat })),
  )
  for (const { tasterId, servingId, position, seat } of seats.toSorted(
    (one, other) => one.position - other.position || one.seat - other.seat,
  )) {
    const level = levelOf(plan, session, servingId)
    if (!level) continue
    const startedAt = startAt + (position * secondsPerServing + seat * 7) * 1000
    ballots.push({
      id: hour.newId(),
      trialId: session.trialId,
      sessionId: session.id,
      tasterId,
      device: sampleDevice,
      count: log.nextCount(),
      startedAt,
      at: startedAt + 70_000,
      about: { kind: 'serving', id: servingId },
      answers: questions.map((response, index) => ({
        responseId: response.id,
        value: scoreOf(hour, tasterId, level, response, ofBatch.get(level.batchId)?.[index] ?? 0),
      })),
    })
  }
  return ballots
}

interface TastedLevel {
  id: string
  value: number
  batchId: string
}

function levelOf(plan: Plan, session: Session, servingId: string): TastedLevel | null {
  const serving = session.dealt.servings.find(({ id }) => id === servingId)
  const piece = session.pieces.find(({ id }) => id === serving?.pieceId)
  const level = plan.levels.find(({ id }) => id === piece?.levelId)
  if (piece?.role !== 'counted' || !level || level.value === null) return null
  return { id: level.id, value: level.value, batchId: piece.batchId }
}

function scoreOf(
  { truth, spreads, panel, noise }: TastingHour,
  tasterId: string,
  level: TastedLevel,
  response: Response,
  batch: number,
): number {
  const expected = truth[response.name]
  if (!expected) throw new Error(`no truth for ${response.name}`)
  const most = response.scale.kind === 'just-about-right' ? 5 : 9
  const narrow = most === 5 ? 0.5 : 1
  const score =
    expected(level.value) +
    narrow * (panel(tasterId, level.id, response.name) + batch + noise(spreads.residual))
  return Math.min(most, Math.max(1, Math.round(score)))
}

/** What each taster is like: a generosity and an own taste for each level, drawn once for the whole trial. */
export function panelOf(noise: (sd: number) => number, spreads: Spreads): TastingHour['panel'] {
  const drawn = new Map<string, number>()
  const keep = (key: string, sd: number) => {
    const found = drawn.get(key) ?? noise(sd)
    drawn.set(key, found)
    return found
  }
  return (tasterId, levelId, response) =>
    keep(`${tasterId} ${response}`, spreads.taster) +
    keep(`${tasterId} ${levelId} ${response}`, spreads.tasterLevel)
}
