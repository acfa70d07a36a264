import { mixedApart } from '@/core/trial/doughs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { DealtDay } from './dealt-day.ts'
import { equalOfDay } from './equal-of-day.ts'
import { usualOvenPace } from './oven-change.ts'
import { plannedDay } from './planned-day.ts'
import type { Block, DayProblem, Order, Stay, Wait, Window } from './search/day-problem.ts'
import { type WorkPart, workParts } from './work-parts.ts'

/** What a day asks of the kitchen besides the plan: how many of what, which hours are closed, from when or until when. */
export interface DayRoom {
  window: Window
  blocks: Block[]
  mixers: number
  /** How long the oven takes to be as hot again after a load. */
  recoverySeconds: number
}

/** Half a minute from oven to mouth, the usual tolerance of a hot piece; the age at baking may differ by 5 % of its length. */
const mouthToleranceSeconds = 60

/**
 * The planned day as a problem for the search: one task for each thing the hands do, a pull after each bake; waits with the
 * steps' tolerances, none early where a mark ends them; doughs in their order at every step, loads in turn. Pieces of later
 * loads wait longer for the oven than the method says, by as much as the planned day has them wait, the same for all lines of
 * a flight: so a flight is compared within itself.
 */
export function problemOfDay(
  plan: Plan,
  day: DealtDay,
  room: DayRoom,
): { problem: DayProblem; parts: WorkPart[] } {
  const planned = plannedDay(plan, day)
  const parts = workParts(plan, day, planned)
  const tasks = parts.map(({ id, batchId, step, what, activeSeconds }) => ({
    ...{ id, line: batchId, step: step.id, activeSeconds },
    uses: [
      ...(activeSeconds > 0 ? [{ resource: 'hands', count: 1 }] : []),
      ...(what === 'work' && step.uses.includes('mixer') ? [{ resource: 'mixer', count: 1 }] : []),
    ],
  }))
  const waits: Wait[] = parts.flatMap(({ id, after }) =>
    after.map(({ from, seconds, earlySeconds, lateSeconds }) => ({
      ...{ from, to: id, seconds, earlySeconds, lateSeconds },
    })),
  )
  const stays: Stay[] = parts.flatMap((part) =>
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
  return {
    parts,
    problem: {
      ...{ tasks, waits, stays, blocks: room.blocks, window: room.window },
      orders: [...doughOrders(plan, day, parts), ...loadOrders(parts, room.recoverySeconds)],
      capacities: { hands: plan.pairsOfHands, oven: plan.placesPerLoad, mixer: room.mixers },
      equal: equalOfDay(plan, parts, { ageTolerance: 0.05, mouthToleranceSeconds }),
      ...{ done: [], nowSeconds: null, oven: usualOvenPace },
    },
  }
}

/** What is done to whole doughs is done in dough order. */
function doughOrders(plan: Plan, day: DealtDay, parts: readonly WorkPart[]): Order[] {
  if (!mixedApart(plan)) return []
  return plan.steps.flatMap((step) => {
    const own = day.dealt.doughOrder.map((batchId) =>
      parts.filter(
        (part) =>
          part.batchId === batchId &&
          part.step.id === step.id &&
          part.what === 'work' &&
          part.whole,
      ),
    )
    return own.slice(1).flatMap((next, at) => {
      const [from, to] = [own[at]?.[0], next[0]]
      return from && to ? [{ from: from.id, to: to.id, seconds: 0 }] : []
    })
  })
}

/** No load is launched before the one ahead is out and the oven has recovered. */
function loadOrders(parts: readonly WorkPart[], recoverySeconds: number): Order[] {
  const pulls = parts.flatMap((part) => (part.what === 'pull' ? [part] : []))
  const loads = [...new Set(pulls.map(({ load }) => load))].toSorted((one, other) => one - other)
  return loads.slice(1).flatMap((load, at) =>
    pulls
      .filter((pull) => pull.load === loads[at])
      .flatMap((before) =>
        pulls
          .filter((pull) => pull.load === load)
          .map(({ launchId }) => ({
            ...{ from: before.id, to: launchId, seconds: recoverySeconds, ofOven: true },
          })),
      ),
  )
}
