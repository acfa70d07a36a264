import type { OvenPace } from '@/core/kitchen/oven-times.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { type DayTask, lineIds, lineOf, taskSeconds } from './day-tasks.ts'
import { type DealtDay, piecesByLoad } from './dealt-day.ts'
import { roomOfDay } from './room-of-day.ts'

/** One way through the oven: of a piece, or of a dough that is baked whole. */
export interface OvenBake {
  id: string
  batchId: string
  /** The load it belongs to; without one it comes last. */
  load: number
  /** Its place in the load, from 0, and how many places it takes. */
  place: number
  places: number
  /** From the first hand that puts it in until it is out, and how much of that is before it is in. */
  holdSeconds: number
  handsSeconds: number
  /** °C at which it goes in and is taken out, and the temperatures of its bakes in turn as a key. */
  entersCelsius: number | undefined
  leavesCelsius: number | undefined
  heat: string
  pace: OvenPace
}

/** All bakes of a day in the order of their loads; what is in no load comes last. */
export function ovenBakes(plan: Plan, day: DealtDay, tasks: readonly DayTask[]): OvenBake[] {
  const loaded = piecesByLoad(day)
  const { pace } = roomOfDay(plan)
  return day.dealt.doughOrder
    .flatMap((batchId) => {
      const own = tasks.filter((task) => task.batchId === batchId)
      const baked = lineIds(batchId, own).flatMap((id) => bakeTasks(lineOf(own, id)).slice(0, 1))
      const ids = new Set(baked.map(({ unit }) => unit.id))
      return [...ids].map((id) => ({ id, batchId, own }))
    })
    .map(({ id, batchId, own }) => {
      const pieces = day.pieces.filter(
        (piece) => piece.id === id || (piece.batchId === id && piece.role !== 'spare'),
      )
      const turn = loaded.findIndex((one) => pieces.some((piece) => piece.id === one.id))
      const bakes = bakeTasks(lineOf(own, id))
      return {
        turn: turn < 0 ? loaded.length : turn,
        bake: {
          id,
          batchId,
          load: loaded[turn]?.load ?? Number.POSITIVE_INFINITY,
          place: id === batchId ? 0 : (loaded[turn]?.place ?? 0),
          places: Math.max(1, Math.min(pieces.length, plan.placesPerLoad)),
          holdSeconds: bakes.reduce((total, task) => total + taskSeconds(task), 0),
          handsSeconds: bakes[0]?.step.handsSeconds ?? 0,
          entersCelsius: bakes[0]?.step.celsius,
          leavesCelsius: bakes.at(-1)?.step.celsius,
          pace,
          heat: bakes.map(({ step }) => step.celsius ?? '').join(' '),
        },
      }
    })
    .toSorted((one, other) => one.turn - other.turn)
    .map(({ bake }) => bake)
}

/** What a line does from its first bake to its last: the oven keeps its place all that time. */
export function bakeTasks<Task extends DayTask>(line: readonly Task[]): Task[] {
  const isBake = ({ step }: Task) => step.kind === 'bake'
  const first = line.findIndex(isBake)
  return first < 0 ? [] : line.slice(first, line.findLastIndex(isBake) + 1)
}

/**
 * Seconds for which the oven must stand empty between two bakes; null where the second may go in beside the first. Loads of
 * other temperatures, and loads during which the heat is turned, never meet in the oven.
 */
export function emptySeconds(before: OvenBake, next: OvenBake): number | null {
  if (before.load === next.load) return null
  if (before.heat === next.heat && before.leavesCelsius === before.entersCelsius) return null
  return ovenChangeSeconds(before.leavesCelsius, next.entersCelsius, before.pace)
}

/** Whole seconds that bring the oven from one temperature (°C) to another; none where either is not known. */
function ovenChangeSeconds(
  from: number | undefined,
  to: number | undefined,
  pace: OvenPace,
): number {
  if (from === undefined || to === undefined || from === to) return 0
  const kelvin = to - from
  return Math.ceil(
    kelvin > 0 ? kelvin * pace.heatSecondsPerKelvin : -kelvin * pace.coolSecondsPerKelvin,
  )
}
