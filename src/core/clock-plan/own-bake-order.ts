import { mixedApart } from '@/core/trial/doughs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { dayAsks } from './day-key.ts'
import type { DealtDay } from './dealt-day.ts'
import { ovenHeat } from './oven-heat.ts'
import { ovenLoads } from './oven-loads.ts'
import { problemOfDay } from './problem-of-day.ts'
import type { DayProblem } from './search/day-problem.ts'
import { mostRung, solveDay } from './search/solve-day.ts'
import { waysDiffer } from './way-to-oven.ts'

/** Looks at a clock that counts them, so that every device answers alike; of larger days nothing is searched. */
const looks = 60
const mostSearched = 160

/** The doughs stay equal: ages at baking and minutes from oven to mouth within a quarter of what is harmless. */
const mostSpreadRung = 1

/** Days asked for again and again, from key to key of one plan, are worked out once. */
const mostKnown = 24
const known = new Map<string, boolean>()

/**
 * Whether the pieces may be baked in an order that is not that of their doughs. They may where the planner finds a day, within
 * the waits' tolerances, on which even the reverse order leaves the doughs equally old at the oven; else a bake order of its own
 * would be one more thing that differs. Where levels take differently long to the oven the doughs are begun to suit the bake, and
 * it may be drawn. What is not found within few steps may not.
 */
export function mayBakeInOwnOrder(plan: Plan): boolean {
  if (!mixedApart(plan)) return false
  if (waysDiffer(plan)) return true
  const { problem } = problemOfDay(plan, reversedDay(plan))
  const asks = dayAsks(problem)
  const equal = known.get(asks) ?? staysEqual(problem)
  known.delete(asks)
  known.set(asks, equal)
  const [oldest] = known.keys()
  if (known.size > mostKnown && oldest !== undefined) known.delete(oldest)
  return equal
}

function staysEqual(problem: DayProblem): boolean {
  if (problem.tasks.length > mostSearched) return false
  let looked = 0
  const clock = () => {
    looked += 1
    return looked
  }
  const solved = solveDay(problem, { clock, milliseconds: looks }, { most: mostRung })
  return solved.ok && solved.plan.spreadRung <= mostSpreadRung
}

/** A day of one flight, baked in the reverse of the order in which its doughs are mixed. */
function reversedDay(plan: Plan): DealtDay {
  const batches = plan.levels.map(({ id }) => ({ id: `dough ${id}`, levelId: id }))
  const pieces = plan.levels.map(({ id }) => ({
    ...{ id: `piece ${id}`, batchId: `dough ${id}`, levelId: id, role: 'counted' as const },
  }))
  const levels = new Map(plan.levels.map((level) => [level.id, level]))
  const loads = ovenLoads({
    warmUp: null,
    flights: [pieces.toReversed()],
    placesPerLoad: plan.placesPerLoad,
    asBaked: plan.serving === 'as-baked',
    heatOf: ({ levelId }) => ovenHeat(plan, levels.get(levelId) ?? null),
  })
  return {
    ...{ batches, pieces },
    dealt: {
      doughOrder: batches.map(({ id }) => id),
      loads: loads.map((own, at) => ({ number: at + 1, pieceIds: own.map(({ id }) => id) })),
    },
  }
}
