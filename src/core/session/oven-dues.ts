import { lineIds, lineOf, taskKey } from '@/core/clock-plan/day-tasks.ts'
import { bakeTasks, ovenBakes } from '@/core/clock-plan/oven-bake.ts'
import {
  type BegunBake,
  inTurn,
  ovenTurns,
  type WaitingBake,
} from '@/core/clock-plan/oven-turns.ts'
import type { PlannedDay } from '@/core/clock-plan/planned-day.ts'
import { betweenLoads } from '@/core/clock-plan/room-of-day.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { type NextOnLine, secondsUntil } from './next-on-line.ts'
import type { Session } from './session-record.ts'
import type { StepRun } from './step-runs.ts'

interface DayAtTheOven {
  session: Session
  plan: Plan
  day: PlannedDay
  runs: readonly StepRun[]
  /** Pieces that will not be served; one that was never said to come out keeps no place. */
  lost: ReadonlySet<string>
  nextOf: ReadonlyMap<string, NextOnLine>
}

/**
 * When the oven is free for each bake to come (UTC ms, by the id of what is baked), in the order of the loads: as the plan's
 * model has it, from what the log says is inside and from when each dough or piece will be ready if it goes on from `now` by
 * the plan.
 */
export function ovenDues(today: DayAtTheOven, now: number): Map<string, number> {
  const { session, plan, day, runs, lost } = today
  const begun: BegunBake[] = []
  const waiting: WaitingBake[] = []
  for (const bake of ovenBakes(plan, session, runs)) {
    const own = runs.filter(({ batchId }) => batchId === bake.batchId)
    const bakes = bakeTasks(lineOf(own, bake.id))
    const [first] = bakes
    if (!first) continue
    const holdSeconds = plannedHold(day, bakes) ?? bake.holdSeconds
    const outAt = bakes.at(-1)?.stoppedAt ?? null
    if (first.startedAt !== null) {
      if (outAt === null && lost.has(bake.id)) continue
      const beginSeconds = first.startedAt / 1000 - first.step.handsSeconds
      const expected = Math.max(now / 1000, beginSeconds + holdSeconds)
      const outSeconds = outAt === null ? expected : outAt / 1000
      begun.push({
        ...bake,
        holdSeconds,
        beginSeconds,
        inSeconds: first.startedAt / 1000,
        outSeconds,
      })
    } else {
      const readyAt = lost.has(bake.id) ? null : readyForOven(today, own, bake.id, now)
      if (readyAt !== null) waiting.push({ ...bake, holdSeconds, readySeconds: readyAt / 1000 })
    }
  }
  const oven = {
    places: plan.placesPerLoad,
    begun,
    nowSeconds: now / 1000,
    between: betweenLoads(plan),
  }
  const queue = inTurn(waiting)
  const beginSeconds = ovenTurns(queue, oven)
  return new Map(queue.map(({ id }, at) => [id, Math.round((beginSeconds[at] ?? 0) * 1000)]))
}

/** How long the planned day keeps a unit in the oven, from the hands that put it in until it is out. */
function plannedHold({ byKey }: PlannedDay, bakes: readonly StepRun[]): number | null {
  const [first, last] = [bakes[0], bakes.at(-1)].map((run) => run && byKey.get(taskKey(run)))
  return first && last ? last.endSeconds - first.beginSeconds : null
}

/** When a unit will be ready for the oven: after all that is still to be done to it, the next thing no sooner than now. */
function readyForOven(
  { day, nextOf }: DayAtTheOven,
  own: readonly StepRun[],
  id: string,
  now: number,
): number | null {
  const lines = nextOf.has(id) ? [id] : lineIds(own[0]?.batchId ?? id, own)
  const [bake] = bakeTasks(lineOf(own, id))
  const readies = lines.flatMap((line) => {
    const next = nextOf.get(line)
    if (!bake || !next || next.dueAt === null) return []
    if (next.run === bake) return [next.dueAt]
    return [Math.max(next.dueAt, now) + secondsUntil(day, lineOf(own, id), next, bake) * 1000]
  })
  return readies.length > 0 ? Math.max(...readies) : null
}
