import { ovenHeat } from '@/core/clock-plan/oven-heat.ts'
import { ovenLoads } from '@/core/clock-plan/oven-loads.ts'
import { waysDiffer, wayToOvenSeconds } from '@/core/clock-plan/way-to-oven.ts'
import { chanceFrom, shuffled } from '@/core/design/chance.ts'
import { letterAt } from '@/core/design/letters.ts'
import { dealCodes } from '@/core/design/serving-codes.ts'
import { codesOfSets } from '@/core/trial/codes-asked.ts'
import { mixedApart } from '@/core/trial/doughs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { levelsServedAgain } from '@/core/trial/served-at-table.ts'
import { cupSheet } from '@/core/weighing/cup-sheet.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { type DealtOrders, dealOrders, streams } from './deal-orders.ts'
import { dealSets } from './deal-sets.ts'
import { drawVersionOf, setsCompleteEarlier } from './draw-version.ts'
import type { Batch, Flight, Piece, Serving, Session } from './session-record.ts'

export interface SessionToDeal {
  plan: Plan
  trialSeed: number
  /** The session's number from 1. */
  number: number
  /** The trial's sessions so far: their codes are not used again, their orders are completed. */
  earlier: readonly Session[]
  at: number
  zone: string
  newId: () => string
  /** For a trial that is made as if it had been dealt before; else as its first session, and a new one as is drawn now. */
  drawVersion?: number
}

export type DealtSession =
  | { ok: true; session: Session }
  | { ok: false; reason: 'needs-two-levels'; levels: number }
  | { ok: false; reason: 'codes-run-out'; asked: number; left: number }

/**
 * Deals one session whole: doughs with their random letters, pieces, flights, loads, servings under their codes, an order for
 * every taster and the tell-apart sets. Kept as facts from then on. The same plan, seed, number and earlier sessions deal the
 * same. How many sessions are planned is taken from the first session, since it is fixed before the first mix.
 */
export function dealSession(wanted: SessionToDeal): DealtSession {
  const { plan, trialSeed, number, earlier, newId } = wanted
  if (plan.levels.length < 2)
    return { ok: false, reason: 'needs-two-levels', levels: plan.levels.length }
  const seed = chanceFrom(trialSeed, 1, number).next() >>> 0
  const version = wanted.drawVersion ?? drawVersionOf(earlier)
  const orders = dealOrders(plan, trialSeed, seed, earlier, version)
  const letters = dealLetters(plan, seed)
  const batches = makeBatches(plan, letters, newId)
  const { pieces, flights, warmUp } = makePieces(plan, orders, batches, newId)
  const counted = flights.flatMap((flight) => flight.pieceIds.map((id) => ({ id, flight })))

  const again = servedAgain(plan, flights, pieces)
  const own = counted.length + (warmUp ? 1 : 0) + again.length
  const dealtCodes = dealCodes(
    chanceFrom(seed, streams.codes),
    own + codesOfSets(plan),
    earlier.flatMap(codesOfSession),
  )
  if (!dealtCodes.ok) return dealtCodes
  const { codes } = dealtCodes
  const served = [
    ...counted.map(({ id, flight }) => ({ pieceId: id, flightId: flight.id })),
    ...(warmUp ? [{ pieceId: warmUp.id, flightId: null }] : []),
  ]
  const once: Serving[] = served.map((serving, index) => ({
    id: newId(),
    code: codes[index] ?? '',
    ...serving,
  }))
  const twice = again.map(({ pieceId, flightId }, index): Serving => {
    const repeats = once.find((serving) => serving.pieceId === pieceId)?.id
    if (repeats === undefined) throw new Error(`nothing served of piece ${pieceId}`)
    return { id: newId(), code: at(codes, once.length + index), pieceId, flightId, repeats }
  })
  const servings = [...once, ...twice]
  const levels = new Map(plan.levels.map((level) => [level.id, level]))
  const heatOf = new Map(
    pieces.map(({ id, levelId }) => [id, ovenHeat(plan, levels.get(levelId) ?? null)]),
  )
  const loads = ovenLoads({
    warmUp: warmUp?.id ?? null,
    flights: flightsToBake(plan, flights, pieces),
    placesPerLoad: plan.placesPerLoad,
    asBaked: plan.serving === 'as-baked',
    heatOf: (id) => heatOf.get(id) ?? '',
  })
  const planned = earlier.find((session) => session.number === 1)?.plannedSessions
  return {
    ok: true,
    session: {
      id: newId(),
      trialId: plan.trialId,
      planId: plan.id,
      number,
      createdAt: wanted.at,
      zone: wanted.zone,
      plannedSessions: planned ?? plan.plannedSessions,
      batches,
      pieces,
      dealt: {
        seed,
        drawVersion: version,
        letters,
        doughOrder: mixedApart(plan)
          ? orders.dough.map((level) => at(batches, level).id)
          : batches.map(({ id }) => id),
        reversed: orders.reversed,
        flights,
        loads: loads.map((pieceIds, index) => ({ id: newId(), number: index + 1, pieceIds })),
        servings,
        tasterOrders: plan.tasters.map(({ tasterId }, taster) => ({
          tasterId,
          servingIds: at(orders.tasters, taster).flatMap((order, flight) =>
            order.map((line) =>
              line < plan.levels.length
                ? servingOf(once, pieces, at(flights, flight), at(plan.levels, line).id)
                : at(twice, line - plan.levels.length).id,
            ),
          ),
        })),
        sets: dealSets(
          plan,
          chanceFrom(seed, streams.sets),
          codes.slice(own),
          newId,
          setsCompleteEarlier(version) ? earlier.flatMap(({ dealt }) => dealt.sets) : [],
        ),
        ...dealTickets(plan, seed, codes),
      },
    },
  }
}

/** The pieces of the first flight that are served a second time, by level in the plan's order. */
function servedAgain(plan: Plan, flights: readonly Flight[], pieces: readonly Piece[]) {
  const first = flights[0]
  if (!first) return []
  return levelsServedAgain(plan).flatMap((levelId) =>
    pieces
      .filter((piece) => piece.flightId === first.id && piece.levelId === levelId)
      .map(({ id }) => ({ pieceId: id, flightId: first.id })),
  )
}

function dealLetters(plan: Plan, seed: number): { levelId: string; letter: string }[] {
  const letters = plan.levels.map((_, index) => letterAt(index))
  const dealt = shuffled(chanceFrom(seed, streams.letters), letters)
  return plan.levels.map((level, index) => ({ levelId: level.id, letter: at(dealt, index) }))
}

/** A ticket for each cup, where the doughs can be made from cups: none is a code of this session. */
function dealTickets(plan: Plan, seed: number, codes: readonly string[]) {
  if (!plan.atTable?.cups || !cupSheet(weighSheet(plan, [])).ok) return {}
  const dealt = dealCodes(chanceFrom(seed, streams.tickets), plan.levels.length, codes)
  if (!dealt.ok) return {}
  return {
    tickets: plan.levels.map(({ id }, index) => ({ levelId: id, ticket: at(dealt.codes, index) })),
  }
}

function makeBatches(
  plan: Plan,
  letters: { levelId: string; letter: string }[],
  newId: () => string,
): Batch[] {
  return mixedApart(plan)
    ? letters.map(({ levelId, letter }) => ({ id: newId(), letter, levelId }))
    : [{ id: newId(), letter: letterAt(letters.length), levelId: null }]
}

function makePieces(plan: Plan, orders: DealtOrders, batches: Batch[], newId: () => string) {
  const pieces: Piece[] = []
  const make = (level: number, flightId: string | null, role: Piece['role']) => {
    const batchId = (batches[level] ?? at(batches, 0)).id
    const piece = { id: newId(), batchId, levelId: at(plan.levels, level).id, flightId, role }
    pieces.push(piece)
    return piece
  }
  const flights: Flight[] = orders.flights.map((order, index) => {
    const id = newId()
    return { id, number: index + 1, pieceIds: order.map((level) => make(level, id, 'counted').id) }
  })
  const control = plan.levels.findIndex((level) => level.control)
  const first = orders.dough[0] ?? 0
  const warmUp = plan.warmUpPiece ? make(control >= 0 ? control : first, null, 'warm-up') : null
  for (let spare = 0; spare < plan.sparePieces; spare += 1)
    plan.levels.forEach((_, level) => {
      make(level, null, 'spare')
    })
  return { pieces, flights, warmUp }
}

/**
 * The pieces in the order they are baked, flight by flight. Rested pieces of one dough that take differently long to the oven
 * are baked as they get ready, whatever their flight.
 */
function flightsToBake(plan: Plan, flights: readonly Flight[], pieces: readonly Piece[]) {
  const byFlight = flights.map(({ pieceIds }) => pieceIds)
  if (mixedApart(plan) || plan.serving === 'as-baked' || !waysDiffer(plan)) return byFlight
  const levels = new Map(plan.levels.map((level) => [level.id, level]))
  const way = new Map(
    pieces.map(({ id, levelId }) => [id, wayToOvenSeconds(plan, levels.get(levelId) ?? null)]),
  )
  return [byFlight.flat().toSorted((one, other) => (way.get(one) ?? 0) - (way.get(other) ?? 0))]
}

function servingOf(servings: Serving[], pieces: Piece[], flight: Flight, levelId: string): string {
  const piece = pieces.find((one) => one.flightId === flight.id && one.levelId === levelId)
  const serving = servings.find((one) => one.pieceId === piece?.id)
  if (!serving) throw new Error(`no serving of level ${levelId} in flight ${flight.number}`)
  return serving.id
}

/** Every code a session has given out, tell-apart samples among them. */
export function codesOfSession(session: Session): string[] {
  return [
    ...session.dealt.servings.map((serving) => serving.code),
    ...session.dealt.sets.flatMap((set) => set.samples.map((sample) => sample.code)),
  ]
}

function at<Item>(items: readonly Item[], index: number): Item {
  const item = items[index]
  if (item === undefined) throw new Error(`nothing at ${index}`)
  return item
}
