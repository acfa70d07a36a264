import { mixedApart } from '@/core/trial/doughs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { DealtDay } from './dealt-day.ts'
import { equalOfDay } from './equal-of-day.ts'
import { emptySeconds, type OvenBake } from './oven-bake.ts'
import { type DayRoom, roomOfDay } from './room-of-day.ts'
import type { RoughDay } from './rough-day.ts'
import { roughDay } from './rough-day.ts'
import type { DayProblem, Order, Stay, TaskToPlace, Wait } from './search/day-problem.ts'
import { mostRung } from './search/solve-day.ts'
import { waysDiffer } from './way-to-oven.ts'
import type { PullPart, WorkPart } from './work-part.ts'
import { workParts } from './work-parts.ts'

/** Minutes from oven to mouth may differ by one; the age at baking by 5 % of its length. */
const mouthToleranceSeconds = 60

/** The line that stands for all doughs, where something is done once for them together. */
export const allDoughs = 'all'

export interface DayAsked {
  problem: DayProblem
  parts: WorkPart[]
  rough: RoughDay
}

/**
 * The planned day as a problem for the search, counted from its first hand: one task for each thing the hands do, a pull after
 * each bake; waits with the steps' tolerances, none early where a mark ends them; doughs in their order at every step, loads
 * in turn. A bake is never off by more than its tolerance, whatever else is. What is done once for all doughs is one task. Pieces of later loads wait longer for the oven than the method says,
 * by as much as the rough day has them wait, the same for all lines of a flight: so a flight is compared within itself.
 */
export function problemOfDay(plan: Plan, day: DealtDay): DayAsked {
  const room = roomOfDay(plan)
  const rough = roughDay(plan, day)
  const parts = workParts(plan, day, rough)
  const waits: Wait[] = parts.flatMap(({ id, what, after }) =>
    after.map(({ from, seconds, earlySeconds, lateSeconds }) => ({
      ...{ from, to: id, seconds, earlySeconds, lateSeconds },
      ...(what === 'pull' ? { mostRung } : {}),
    })),
  )
  const inTurn = loadOrders(parts, rough.bakes, room.recoverySeconds)
  const fridge = room.fridgePlaces === null ? {} : { fridge: room.fridgePlaces }
  return {
    ...{ parts, rough },
    problem: {
      ...{ tasks: parts.map((part) => taskOf(part, room)), waits },
      stays: [...ovenStays(parts), ...(room.fridgePlaces === null ? [] : fridgeStays(parts))],
      ...{ blocks: [], window: { startSeconds: 0, startFixed: true } },
      orders: [
        ...doughOrders(plan, day, parts),
        ...inTurn,
        ...(mixedApart(plan) && waysDiffer(plan) ? meetings(parts, inTurn) : []),
      ],
      capacities: {
        ...{ hands: room.hands, oven: plan.placesPerLoad, mixer: room.mixers, ...fridge },
        ...(room.hands > 1 ? { baker: 1 } : {}),
      },
      equal: equalOfDay(plan, parts, { ageTolerance: 0.05, mouthToleranceSeconds }),
      ...{ done: [], nowSeconds: null, oven: room.pace },
    },
  }
}

/** A machine that works alone keeps no hands; what wants one person keeps that one, where there are others. */
function taskOf(part: WorkPart, { hands }: DayRoom): TaskToPlace {
  const { id, batchId, step, what, activeSeconds, forAll } = part
  const works = activeSeconds > 0
  const alone = what === 'work' && step.uses.length === 1 && step.uses[0] === 'mixer'
  const one = (resource: string) => ({ resource, count: 1 })
  return {
    ...{ id, line: forAll ? allDoughs : batchId, step: step.id, activeSeconds },
    uses: [
      ...(works && !alone ? [one('hands')] : []),
      ...(works && what === 'work' && step.uses.includes('mixer') ? [one('mixer')] : []),
      ...(works && what === 'work' && step.samePerson && hands > 1 ? [one('baker')] : []),
    ],
  }
}

function ovenStays(parts: readonly WorkPart[]): Stay[] {
  return parts.flatMap((part) =>
    part.what === 'pull'
      ? [
          {
            ...{ resource: 'oven', count: part.places, from: part.launchId, to: part.id },
            afterSeconds: 0,
            ...(part.celsius === undefined ? {} : { celsius: part.celsius }),
          },
        ]
      : [],
  )
}

/** From the hands that put a dough, or a piece, into the cold to those that take it out. */
function fridgeStays(parts: readonly WorkPart[]): Stay[] {
  return parts
    .filter(({ step, what }) => step.kind === 'cold-proof' && what === 'work')
    .flatMap((cold) => {
      const next = parts.filter(({ after }) => after.some(({ from }) => from === cold.id))
      const pieces = cold.whole && cold.unitIds.length === 1 ? 1 : cold.unitIds.length
      const each = next.length === 1 ? pieces : 1
      return next.map(({ id }) => ({
        ...{ resource: 'fridge', count: each, from: cold.id, to: id, afterSeconds: 0 },
      }))
    })
}

/** What is done to whole doughs is done in dough order; the oven, and what comes after it, has an order of its own. */
function doughOrders(plan: Plan, day: DealtDay, parts: readonly WorkPart[]): Order[] {
  if (!mixedApart(plan)) return []
  return plan.steps.flatMap((step) => {
    const own = day.dealt.doughOrder.map((batchId) =>
      parts.filter(
        (part) =>
          part.batchId === batchId &&
          part.step.id === step.id &&
          part.what === 'work' &&
          part.whole &&
          part.step.kind !== 'bake' &&
          !part.afterOven &&
          !part.forAll,
      ),
    )
    return own.slice(1).flatMap((next, at) => {
      const [from, to] = [own[at]?.[0], next[0]]
      return from && to ? [{ from: from.id, to: to.id, seconds: 0 }] : []
    })
  })
}

/** No load is launched before the one ahead is out and the oven has recovered, or come to another temperature. */
function loadOrders(
  parts: readonly WorkPart[],
  bakes: readonly OvenBake[],
  recoverySeconds: number,
): Order[] {
  const bakeOf = (pull: PullPart) => bakes.find(({ id }) => pull.unitIds.includes(id))
  const rests = (before: PullPart, next: PullPart) => {
    const [one, other] = [bakeOf(before), bakeOf(next)]
    return Math.max(recoverySeconds, (one && other && emptySeconds(one, other)) ?? 0)
  }
  const pulls = parts.flatMap((part) => (part.what === 'pull' ? [part] : []))
  const loads = [...new Set(pulls.map(({ load }) => load))].toSorted((one, other) => one - other)
  return loads.slice(1).flatMap((load, at) =>
    pulls
      .filter((pull) => pull.load === loads[at])
      .flatMap((before) =>
        pulls
          .filter((pull) => pull.load === load)
          .map((next) => ({
            ...{ from: before.id, to: next.launchId, seconds: rests(before, next), ofOven: true },
          })),
      ),
  )
}

/** Doughs that take differently long to the oven still meet there: within the hands for their load and so long. */
const mostApartSeconds = 120

function meetings(parts: readonly WorkPart[], loads: readonly Order[]): Order[] {
  const pulls = parts
    .flatMap((part) => (part.what === 'pull' ? [part] : []))
    .toSorted((one, other) => one.load - other.load)
  const noLater = (from: string, to: string, seconds: number): Order => ({
    ...{ from: to, to: from, fromBegin: true, seconds: -seconds },
  })
  return pulls.slice(1).flatMap((next, at) => {
    const before = pulls[at]
    if (!before) return []
    if (before.load !== next.load) {
      const rests = loads.find(({ from, to }) => from === before.id && to === next.launchId)
      const seconds = before.activeSeconds + (rests?.seconds ?? 0) + mostApartSeconds
      return [noLater(before.id, next.launchId, seconds)]
    }
    const hands = parts.find(({ id }) => id === next.launchId)?.activeSeconds ?? 0
    return [
      noLater(before.launchId, next.launchId, hands + mostApartSeconds),
      noLater(next.launchId, before.launchId, hands + mostApartSeconds),
    ]
  })
}
