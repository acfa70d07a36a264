import { workOfMix } from './heat-balance.ts'
import type { MixBodies } from './heat-part.ts'
import { lineOfPoints, meanOf } from './line-of-points.ts'

/** One logged mix: its bodies at the temperatures logged, the water used, the dough that came out, its level. */
export interface LoggedMix {
  bodies: MixBodies
  waterCelsius: number
  doughCelsius: number
  /** The factor's value; null for a choice. */
  level: number | null
}

export interface LearnedWork {
  /** Mixing work per kg of flour, mean over the batches, and its standard deviation (n - 1; null of one batch). */
  kilojoulesPerKilogram: number
  sdKilojoulesPerKilogram: number | null
  batches: number
  /** What the doughs add to the room's usual share, kJ/(K kg): 0 until they stand far enough apart against their rooms. */
  roomHeatChange: number
  /** Straight line on the level: work = at mean level + slope × (L - mean), held at its ends beyond the logged levels. */
  slope: { perLevel: number; meanLevel: number; leastLevel: number; mostLevel: number } | null
}

/** A slope over levels is only told by at least so many doughs. */
const fewestForSlope = 5
/** The room's share is only learned once logged doughs differ by so much in dough less room, °C … */
const apartForRoom = 5
/** … and once the doughs know it at least as well as the eleven published ones do: standard error of K, kJ/(K kg). */
const roomHeatError = 0.43

/**
 * Mixing work learned from logged dough temperatures: e of each batch by the balance, averaged. It takes in everything the
 * balance leaves out. The room's share is learned beside it only once four doughs or more differ by 5 °C in dough less room and
 * pin it down to 0.43 kJ/(K kg), the error of the published doughs. A slope over three levels or more is kept only where it is
 * more than twice its own standard error.
 */
export function learnMixingWork(
  mixes: readonly LoggedMix[],
): ({ ok: true } & LearnedWork) | { ok: false; reason: 'no-logged-mix' } {
  const read = mixes.flatMap(({ bodies, waterCelsius, doughCelsius, level }) => {
    const work = workOfMix(bodies, waterCelsius, doughCelsius)
    return work === null ? [] : [{ work, level, apart: doughCelsius - bodies.room.celsius, bodies }]
  })
  if (read.length === 0) return { ok: false, reason: 'no-logged-mix' }
  const roomHeatChange = roomHeatOf(read)
  const freed = read.map(({ work, level, apart }) => ({
    ...{ level, work: work + roomHeatChange * apart },
  }))
  const mean = meanOf(freed.map(({ work }) => work))
  const squares = freed.reduce((sum, { work }) => sum + (work - mean) ** 2, 0)
  return {
    ok: true,
    kilojoulesPerKilogram: mean,
    sdKilojoulesPerKilogram: freed.length > 1 ? Math.sqrt(squares / (freed.length - 1)) : null,
    batches: freed.length,
    roomHeatChange,
    slope: slopeOf(freed),
  }
}

/** Learned work at a level: on the line where there is one and as far as it was logged, else the mean. */
export function workAtLevel(learned: LearnedWork, level: number | null): number {
  const { slope, kilojoulesPerKilogram } = learned
  if (!slope || level === null) return kilojoulesPerKilogram
  const logged = Math.min(slope.mostLevel, Math.max(slope.leastLevel, level))
  return kilojoulesPerKilogram + slope.perLevel * (logged - slope.meanLevel)
}

/** e(K) = e − ΔK (T_dough − T_room): minus the slope of the works over dough less room is what the room's share lacks. */
function roomHeatOf(read: readonly { work: number; apart: number; bodies: MixBodies }[]): number {
  const aparts = read.map(({ apart }) => apart)
  if (read.length < 4 || Math.max(...aparts) - Math.min(...aparts) < apartForRoom) return 0
  const line = lineOfPoints(read.map(({ work, apart }) => ({ x: apart, y: work })))
  if (!line || line.slopeError > roomHeatError) return 0
  const shares = read.map(
    ({ bodies }) => bodies.room.kilojoulesPerKelvin / (bodies.flourGrams / 1000),
  )
  return Math.max(-line.slope, -Math.min(...shares))
}

function slopeOf(read: readonly { work: number; level: number | null }[]): LearnedWork['slope'] {
  const points = read.flatMap(({ work, level }) => (level === null ? [] : [{ x: level, y: work }]))
  const levels = points.map(({ x }) => x)
  if (points.length !== read.length || points.length < fewestForSlope) return null
  const line = new Set(levels).size < 3 ? null : lineOfPoints(points)
  if (!line || Math.abs(line.slope) <= 2 * line.slopeError) return null
  return {
    ...{ perLevel: line.slope, meanLevel: line.meanX },
    ...{ leastLevel: Math.min(...levels), mostLevel: Math.max(...levels) },
  }
}
