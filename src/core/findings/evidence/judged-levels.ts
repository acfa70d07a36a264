import {
  chanceWith,
  marginForChance,
  sessionsForChance,
  wantedChance,
} from '@/core/design/as-good-chance.ts'
import { type Absent, absent, isPresent } from '@/core/findings/reason.ts'
import type { RungName } from '@/core/findings/rungs/decisive-rung.ts'
import type { Best, LevelId } from '@/core/findings/rungs/rung-shape.ts'
import { levelValues } from '@/core/findings/rungs/trend-of.ts'
import type { LevelsPresent } from '@/core/findings/table/levels-present.ts'
import type { ScoreResponse } from '@/core/findings/table/score-table.ts'
import type { PairOfLevels } from '@/core/statistics/block-model/all-pairs.ts'
import {
  type ComparedLevels,
  levelDifference,
} from '@/core/statistics/block-model/level-difference.ts'
import type { Better } from '@/core/trial/response.ts'
import { asGood } from './as-good.ts'
import { bestPlace } from './best-place.ts'
import type { Lacks } from './conclusion-shape.ts'
import type { Allowance, AsGood, Place, TooSmall } from './evidence-shape.ts'
import { tooSmall } from './too-small.ts'

/** Levels that are compared, whatever they were fitted from; `best` is the curve's, absent where none was drawn. */
export interface Judgeable {
  fit: ComparedLevels
  present: LevelsPresent
  pairs: readonly PairOfLevels[]
  best: Best | Absent
}

/** What the levels of the rung that answers are judged by. */
export interface JudgedBy {
  found: Judgeable
  response: ScoreResponse
  allowance: Allowance
  /** The level named before the mix, by its place in the table. */
  hoped: number | null
}

/** Too small to matter, of all pairs and against the usual; without a margin nothing can be. */
export function tooSmallOf({ found, response, allowance }: JudgedBy): TooSmall | Absent {
  if (response.margin === null) return absent('no-margin')
  const levelIds = found.present.levels.map(({ id }) => id)
  const oneSided = allowance.twiceOneSided / 2
  return tooSmall(found.fit, levelIds, response.margin, found.present.control, oneSided)
}

/** As good as the best; only of a response that is better higher or lower. */
export function asGoodOf({ found, response, allowance, hoped }: JudgedBy): AsGood | Absent {
  const { margin, better } = response
  if (margin === null) return absent('no-margin')
  const sign = signOf(better)
  if (sign === null) return absent('no-direction')
  const levelIds = found.present.levels.map(({ id }) => id)
  const named = hoped === null ? -1 : found.present.index.indexOf(hoped)
  const judged = asGood(
    found.fit,
    sign,
    margin,
    named < 0 ? null : named,
    allowance.twiceOneSided / 2,
  )
  const best = bestOf(found.fit, sign)
  return {
    margin,
    best: levelIds[best] as LevelId,
    named: named < 0 ? null : (levelIds[named] as LevelId),
    levels: judged.map((one, at) => ({ level: levelIds[at] as LevelId, ...one })),
  }
}

/** Where the best may lie, from three levels with values up; `inside`: both ends are shown to be no best. */
export function placeOf({ found, response, allowance }: JudgedBy, inside: boolean): Place | Absent {
  const { present, fit, best } = found
  if (present.levels.some(({ value }) => value === null)) return absent('choice-factor')
  if (present.levels.length < 3) return absent('needs-three-levels')
  const sign = signOf(response.better)
  if (sign === null) return absent('no-direction')
  const values = levelValues(present)
  const place = bestPlace(fit, values, sign, allowance.twiceOneSided / 2, inside)
  const candidates = place.candidates.map((at) => present.levels[at]?.id as LevelId)
  return { ...place, candidates, even: inside ? evenHump(best, place) : null }
}

/** The curve's turning point, where it lies in the stretch and nothing says that a curve is too simple. */
function evenHump(
  best: Best | Absent,
  { low, high }: { low: number; high: number },
): Place['even'] {
  if (!isPresent(best) || !isPresent(best.vertex) || !isPresent(best.fieller)) return null
  if (isPresent(best.lackOfFit) && best.lackOfFit.p < 0.05) return null
  if (best.fieller.kind !== 'interval' || best.vertex < low || best.vertex > high) return null
  return { at: best.vertex, set: best.fieller }
}

/**
 * What is lacking to know whether a level is as good, by the spread that was found: so many sessions (in no block: doughs of each level) in all where twelve or fewer make it
 * 8 in 10 that a level truly as good is shown to be, else a margin that six would do for. Null where it is not lacking.
 */
export function lacksOf(
  { found, response, hoped }: JudgedBy,
  rung: RungName,
  times: number,
  inNoBlock: boolean,
): Lacks | null {
  if (rung !== 'factor') return { what: 'a-second-session' }
  const { margin } = response
  if (margin === null || signOf(response.better) === null) return null
  const { se } = levelDifference(found.fit, 0, 1)
  const design = {
    levels: found.present.levels.length,
    unitVariance: (se ** 2 / 2) * times,
    named: hoped !== null && found.present.index.includes(hoped),
  }
  if (chanceWith({ ...design, margin }, times) >= wantedChance) return null
  const enough = sessionsForChance({ ...design, margin })
  if (enough !== null && enough <= mostAsked)
    return { what: inNoBlock ? 'repeats' : 'sessions', enough }
  return { what: 'margin', least: marginForChance(design, usualMost) }
}

/** More sessions than these nobody is told to bake; so many a wider margin is worked out for. */
const mostAsked = 12
const usualMost = 6

/** 1 where higher is better, −1 where lower is, null where neither is. */
export function signOf({ is }: Better): 1 | -1 | null {
  if (is === 'higher') return 1
  return is === 'lower' ? -1 : null
}

/** The level with the best mean, the lowest of equal ones (to ten decimals). */
function bestOf(fit: ComparedLevels, sign: 1 | -1): number {
  const good = Array.from({ length: fit.levelCount }, (_, level) =>
    level === 0 ? 0 : sign * levelDifference(fit, 0, level).difference,
  )
  const top = Math.max(...good)
  return good.findIndex((value) => top - value < 5e-11)
}
