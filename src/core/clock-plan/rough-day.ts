import type { Plan } from '@/core/trial/plan-record.ts'
import { handsOnDoughSeconds } from './bake-order.ts'
import { type DayTask, dayTasks, lineIds, lineOf, taskSeconds } from './day-tasks.ts'
import type { DealtDay } from './dealt-day.ts'
import { doughStarts } from './dough-starts.ts'
import { bakeTasks, type OvenBake, ovenBakes } from './oven-bake.ts'
import { betweenLoads } from './room-of-day.ts'

/** A task with its moments, in seconds from the day's first hand: hands begin, and its wait ends. */
export interface RoughTask extends DayTask {
  beginSeconds: number
  endSeconds: number
  /** When it could have begun by the method alone; later, a bake waits for the oven and a hot piece for the hands. */
  readySeconds: number
}

export interface RoughDay {
  /** In dough order, and within a dough in the method's order. */
  tasks: RoughTask[]
  bakes: OvenBake[]
}

/**
 * The day of one session with nothing kept apart but the oven: what tells how long the pieces of each load wait for it beyond
 * the method, the same for all that are compared, and in which order things come. The day that is followed is `plannedDay`.
 * Doughs are begun as `doughStarts` says and go through the method without a stop; a bake waits until the oven has a place
 * and is at its temperature; the pieces of a load are finished one after another by one pair of hands. A step of a whole
 * dough waits for all its pieces.
 */
export function roughDay(plan: Plan, day: DealtDay): RoughDay {
  const tasks = dayTasks(plan, day)
  const bakes = ovenBakes(plan, day, tasks)
  const order = day.dealt.doughOrder
  const doughs = order.map((id) => tasks.filter(({ batchId }) => batchId === id))
  const untimed = timedTasks(doughs, () => ({ start: 0, bake: null, after: 0 }))
  const onTheirWay = bakes.map((bake) => {
    const first = untimed.find(({ unit, step }) => unit.id === bake.id && step.kind === 'bake')
    return { ...bake, methodSeconds: first?.readySeconds ?? 0 }
  })
  const { startSeconds, bakeSeconds } = doughStarts(order, onTheirWay, {
    handsSeconds: handsOnDoughSeconds(plan),
    places: plan.placesPerLoad,
    between: betweenLoads(plan),
  })
  const after = handsAfterBake(plan)
  const placeOf = new Map(bakes.map(({ id, place }) => [id, place]))
  const timed = timedTasks(doughs, (batchId, unitId) => ({
    start: startSeconds.get(batchId) ?? 0,
    bake: bakeSeconds.get(unitId) ?? null,
    after: (placeOf.get(unitId) ?? 0) * after,
  }))
  const first = Math.min(...timed.map(({ beginSeconds }) => beginSeconds))
  const planned = timed.map((task) => ({
    ...task,
    beginSeconds: task.beginSeconds - first,
    endSeconds: task.endSeconds - first,
    readySeconds: task.readySeconds - first,
  }))
  return { tasks: planned, bakes }
}

interface Moments {
  start: number
  /** When the unit's bake begins; null for as soon as it is ready. */
  bake: number | null
  /** How long the unit waits for the hands once it is out. */
  after: number
}

/** Every dough from its start on, each unit at its own pace. */
function timedTasks(
  doughs: readonly DayTask[][],
  momentsOf: (batchId: string, unitId: string) => Moments,
): RoughTask[] {
  return doughs.flatMap((own) => {
    const [{ batchId } = { batchId: '' }] = own
    const units = lineIds(batchId, own)
    const ends = new Map(units.map((id) => [id, momentsOf(batchId, id).start]))
    const turningOf = new Map(units.map((id) => [id, roundTheOven(lineOf(own, id))]))
    return own.map((task) => {
      const { unit } = task
      const its = unit.kind === 'piece' ? [unit.id] : units
      const ready = Math.max(...its.map((id) => ends.get(id) ?? 0))
      const moments = momentsOf(batchId, unit.id)
      const turning = its.map((id) => turningOf.get(id))
      let begin = ready
      if (turning.some((one) => one?.bake === task)) begin = Math.max(ready, moments.bake ?? ready)
      else if (turning.some((one) => one?.next === task)) begin = ready + moments.after
      const endSeconds = begin + taskSeconds(task)
      for (const id of its) ends.set(id, endSeconds)
      return { ...task, beginSeconds: begin, endSeconds, readySeconds: ready }
    })
  })
}

/** Where a line meets the oven, and what it does next once it is out. */
function roundTheOven(line: readonly DayTask[]): { bake?: DayTask; next?: DayTask } {
  const bakes = bakeTasks(line)
  const [bake] = bakes
  if (!bake) return {}
  const next = line[line.indexOf(bake) + bakes.length]
  return next ? { bake, next } : { bake }
}

function handsAfterBake({ steps }: Plan): number {
  const last = steps.findLastIndex(({ kind }) => kind === 'bake')
  return steps.slice(last + 1).reduce((sum, step) => sum + step.handsSeconds * step.repeats, 0)
}
