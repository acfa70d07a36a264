import { workOfMix } from './heat-balance.ts'
import type { MixBodies } from './heat-part.ts'

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
  /** Straight line on the level by least squares, once three distinct levels carry one: work = at mean level + slope × (L - mean). */
  slope: { perLevel: number; meanLevel: number } | null
}

/**
 * Mixing work learned from logged dough temperatures: e = (T_dough Σ mc − Σ mcT − q_h m_dry)/m_flour of each batch, averaged.
 * It takes in everything the balance leaves out, such as heat lost to the room, so it may be below zero in a cold kitchen.
 */
export function learnMixingWork(
  mixes: readonly LoggedMix[],
): ({ ok: true } & LearnedWork) | { ok: false; reason: 'no-logged-mix' } {
  const read = mixes.flatMap(({ bodies, waterCelsius, doughCelsius, level }) => {
    const work = workOfMix(bodies, waterCelsius, doughCelsius)
    return work === null ? [] : [{ work, level }]
  })
  if (read.length === 0) return { ok: false, reason: 'no-logged-mix' }
  const mean = meanOf(read.map(({ work }) => work))
  const squares = read.reduce((sum, { work }) => sum + (work - mean) ** 2, 0)
  const sd = read.length > 1 ? Math.sqrt(squares / (read.length - 1)) : null
  const line = lineOf(read)
  return {
    ok: true,
    kilojoulesPerKilogram: mean,
    sdKilojoulesPerKilogram: sd,
    batches: read.length,
    slope: line,
  }
}

/** Learned work at a level: on the line where there is one, else the mean. */
export function workAtLevel(learned: LearnedWork, level: number | null): number {
  const { slope, kilojoulesPerKilogram } = learned
  if (!slope || level === null) return kilojoulesPerKilogram
  return kilojoulesPerKilogram + slope.perLevel * (level - slope.meanLevel)
}

function lineOf(read: { work: number; level: number | null }[]): LearnedWork['slope'] {
  const points = read.flatMap(({ work, level }) => (level === null ? [] : [{ work, level }]))
  if (points.length !== read.length || new Set(points.map(({ level }) => level)).size < 3)
    return null
  const meanLevel = meanOf(points.map(({ level }) => level))
  const meanWork = meanOf(points.map(({ work }) => work))
  const across = points.reduce((sum, { level }) => sum + (level - meanLevel) ** 2, 0)
  const along = points.reduce(
    (sum, { level, work }) => sum + (level - meanLevel) * (work - meanWork),
    0,
  )
  return { perLevel: along / across, meanLevel }
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length
}
