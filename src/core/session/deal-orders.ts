import { begunSeconds } from '@/core/clock-plan/begun-seconds.ts'
import { waysDiffer, wayToOvenSeconds } from '@/core/clock-plan/way-to-oven.ts'
import { chanceFrom, shuffled } from '@/core/design/chance.ts'
import { servingOrders } from '@/core/design/serving-orders.ts'
import { tasterOrders } from '@/core/design/taster-orders.ts'
import { mixedApart } from '@/core/trial/doughs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { inTwoGoes, levelsServedAgain } from '@/core/trial/served-at-table.ts'
import { firstFlightInDoughOrder } from './draw-version.ts'
import { hasLevels, ordersByLevel } from './earlier-orders.ts'
import type { Session } from './session-record.ts'

/** The draws of one session, each from its own stream, so that one more draw in one place moves no other. */
export const streams = {
  letters: 1,
  dough: 2,
  flights: 3,
  tasters: 4,
  codes: 5,
  sets: 6,
  tickets: 7,
} as const

export interface DealtOrders {
  /** Level indexes in the order the doughs are mixed. */
  dough: number[]
  reversed: boolean
  /** One order of level indexes a flight. */
  flights: number[][]
  /**
   * [taster][flight]: the order in which that taster gets the flight's levels. An index past the levels is the second serving
   * of a level served again, in the order of the plan's levels.
   */
  tasters: number[][][]
}

/**
 * Draws a session's orders as level indexes. Doughs: drawn in the first session, reversed in the next (which cancels a steady
 * drift), then drawn again. Flights: the first is baked in dough order unless another order leaves the doughs as equal
 * (`version` says by which rule); the others, like all draws, are rows of one Williams design that complete the earlier ones. Served as baked everybody tastes in
 * the order of baking; rested each taster has a row of their own. Where the levels take differently long to the oven, time
 * has the last word: doughs mixed apart are begun in the order that brings them to the oven as drawn, and pieces of one dough
 * are baked as they get ready.
 */
export function dealOrders(
  plan: Plan,
  trialSeed: number,
  sessionSeed: number,
  earlier: readonly Session[],
  version: number,
): DealtOrders {
  const levelIds = plan.levels.map((level) => level.id)
  const labelling = shuffled(
    chanceFrom(trialSeed, 0, levelIds.length),
    levelIds.map((_, index) => index),
  )
  const alike = earlier
    .filter((session) => hasLevels(session, levelIds))
    .toSorted((one, other) => one.number - other.number)
  const before = alike.map((session) => ordersByLevel(session, levelIds))
  const draw = (stream: number, count: number, used: number[][], part = 0) =>
    servingOrders({
      chance: chanceFrom(sessionSeed, stream, part),
      labelling,
      count,
      earlier: used,
    })

  const apart = mixedApart(plan)
  const last = alike.at(-1)
  const doughBefore = before.map(({ dough }) => dough).filter((order) => order.length > 0)
  const previous = doughBefore.at(-1)
  const reversed = apart && last !== undefined && !last.dealt.reversed && previous !== undefined
  const drawn = reversed ? previous.toReversed() : (draw(streams.dough, 1, doughBefore)[0] ?? [])

  const baked = before.flatMap(({ bake }) => bake)
  const first = apart && firstFlightInDoughOrder(plan, version) ? [drawn] : []
  const toCome = version >= 5 && !reversed && plan.plannedSessions > 1
  const reverses = toCome ? first.map((row) => row.toReversed()) : []
  const rows = [
    ...first,
    ...draw(streams.flights, plan.flights - first.length, [...baked, ...first, ...reverses]),
  ]
  const flights = apart ? rows : rows.map((row) => asTheyGetReady(plan, row))
  const dough = apart ? asTheyAreBegun(plan, drawn, rows[0] ?? drawn) : drawn

  const tasters =
    plan.serving === 'as-baked'
      ? plan.tasters.map(() => flights)
      : restedOrders(plan, trialSeed, sessionSeed, alike)
  return { dough, reversed, flights, tasters }
}

/** Levels by how long they take to the oven, the quickest first; equal ones stay as drawn. */
function asTheyGetReady(plan: Plan, row: readonly number[]): number[] {
  const ways = plan.levels.map((level) => wayToOvenSeconds(plan, level))
  return row.toSorted((one, other) => (ways[one] ?? 0) - (ways[other] ?? 0))
}

/** Levels by when their dough must be begun to meet the oven in the row's order; as drawn where all take equally long. */
function asTheyAreBegun(plan: Plan, drawn: number[], row: readonly number[]): number[] {
  if (!waysDiffer(plan)) return drawn
  const begun = plan.levels.map((level, index) => begunSeconds(plan, level, row.indexOf(index)))
  return row.toSorted((one, other) => (begun[one] ?? 0) - (begun[other] ?? 0))
}

/**
 * An order of their own for every taster and flight. A hidden duplicate is one line more of the first flight; in two goes the
 * first flight is offered twice, the second time in another order.
 */
function restedOrders(
  plan: Plan,
  trialSeed: number,
  sessionSeed: number,
  alike: readonly Session[],
): number[][][] {
  const levelIds = plan.levels.map(({ id }) => id)
  const goes = inTwoGoes(plan)
  const againIds = goes ? [] : levelsServedAgain(plan)
  const used = alike.flatMap((session) => ordersByLevel(session, levelIds, againIds).mouth)
  const rowsOf = (part: number, lines: number) => {
    const rows = tasterOrders({
      chance: chanceFrom(sessionSeed, streams.tasters, part),
      labelling: shuffled(
        chanceFrom(trialSeed, 0, lines),
        Array.from({ length: lines }, (_, index) => index),
      ),
      count: plan.tasters.length,
      earlier: used.filter((row) => row.length === lines),
    })
    used.push(...rows)
    return rows
  }
  const count = levelIds.length
  const byFlight = Array.from({ length: plan.flights }, (_, flight) => {
    const rows = rowsOf(flight, flight === 0 ? count + againIds.length : count)
    if (flight > 0 || !goes) return rows
    const second = rowsOf(plan.flights, count)
    return rows.map((row, taster) => [...row, ...(second[taster] ?? []).map((one) => one + count)])
  })
  return plan.tasters.map((_, taster) => byFlight.map((rows) => rows[taster] ?? []))
}
