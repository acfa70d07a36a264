import { lineOf, taskSeconds } from '@/core/clock-plan/day-tasks.ts'
import { bakeTasks } from '@/core/clock-plan/oven-bake.ts'
import { type PlannedDay, plannedDay } from '@/core/clock-plan/planned-day.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/** What the planned day does to one counted piece, in seconds. */
export interface PlannedTimes {
  pieceId: string
  levelId: string
  /** From the mix to the oven by the method alone, and the wait for the oven beyond it. */
  methodSeconds: number
  waitedSeconds: number
  /** Out of the oven, from the first hand of the day. */
  outSeconds: number
  /** From the oven to the mouth. */
  ageSeconds: number
}

/**
 * How each counted piece fares on the planned day (`plannedDay`). Hot pieces are eaten as each is ready, rested ones all
 * together once the last is ready. Empty where nothing is baked.
 */
export function plannedTimes(plan: Plan, session: Session): PlannedTimes[] {
  const day = plannedDay(plan, session)
  const counted = day.bakes.flatMap((bake) =>
    session.pieces
      .filter((piece) => piece.role === 'counted' && [piece.id, piece.batchId].includes(bake.id))
      .map((piece) => ({ ...piece, ...timesOf(day, piece) })),
  )
  const tasted = Math.max(0, ...counted.map(({ readySeconds }) => readySeconds))
  return counted.map(({ id, levelId, readySeconds, ...times }) => ({
    ...{ pieceId: id, levelId, ...times },
    ageSeconds: (plan.serving === 'as-baked' ? readySeconds : tasted) - times.outSeconds,
  }))
}

function timesOf(day: PlannedDay, piece: { id: string; batchId: string }) {
  const own = day.tasks.filter(({ batchId }) => batchId === piece.batchId)
  const line = lineOf(own, piece.id)
  const bakes = bakeTasks(line)
  const [first] = bakes
  const way = first ? line.slice(0, line.indexOf(first)) : []
  const methodSeconds = way.reduce((total, task) => total + taskSeconds(task), 0)
  const mixed = line[0]?.beginSeconds ?? 0
  return {
    methodSeconds,
    waitedSeconds: (first?.beginSeconds ?? 0) - mixed - methodSeconds,
    outSeconds: bakes.at(-1)?.endSeconds ?? 0,
    readySeconds: line.at(-1)?.endSeconds ?? 0,
  }
}
