import type { ActsOn } from '@/core/trial/factor.ts'
import { workedInShare } from '@/core/trial/level-ratio.ts'
import { type Achieved, achievedLevel, type LevelTerm } from './achieved-level.ts'
import type { BatchWeights, WeighLine } from './batch-weights.ts'
import { levelAtFourteen } from './level-at-fourteen.ts'

/** A weight as logged; a ripe starter is logged by its preferment's id, a dose by the ingredient it brings. */
export interface LoggedWeight {
  ingredientId: string
  prefermentId: string | null
  grams: number
}

/** What was worked in while handling, in grams for the whole batch (a piece's share times its pieces). */
export interface WorkedIn {
  dustingFlourGrams: number
  handWaterGrams: number
  oilGrams: number
}

export interface WorkedLevel {
  /** The level by the logged weights; lines that were not logged stand at their target. */
  weighed: Achieved
  /** The same with dusting flour, hand water and oil; equal to `weighed` when none was logged. */
  handled: Achieved
  /** As weighed, told at 14 % flour moisture; null where a moisture is not known or the factor is not hydration. */
  atFourteen: number | null
  loggedLines: number
  allLines: number
}

/**
 * The level of a batch as weighed and as handled, from its weigh sheet and the log. Refuses when the factor is not read
 * from weights, or nothing was logged. Worked-in amounts carry no uncertainty of their own: they are estimates.
 */
export function levelFromWeights(
  batch: BatchWeights,
  acts: ActsOn,
  logged: readonly LoggedWeight[],
  workedIn: WorkedIn,
):
  | ({ ok: true } & WorkedLevel)
  | { ok: false; reason: 'not-read-from-weights' | 'nothing-logged' } {
  const counted = batch.lines.filter(({ share }) => share !== null)
  if (counted.length === 0) return { ok: false, reason: 'not-read-from-weights' }
  const readings = counted.map((line) => logged.find((one) => isOf(line, one)))
  const loggedLines = readings.filter((reading) => reading !== undefined).length
  const handTerms = workedTerms(batch, acts, workedIn)
  if (loggedLines === 0 && handTerms.every(({ grams }) => grams === 0)) {
    return { ok: false, reason: 'nothing-logged' }
  }
  const terms = counted.map((line, index): LevelTerm => {
    const share = line.share ?? { above: 0, below: 0 }
    const grams = readings[index]?.grams ?? line.grams
    return { ...share, grams, uncertaintyGrams: line.uncertaintyGrams }
  })
  const atFourteen = levelAtFourteen(
    acts,
    counted.map((line, index) => ({ ...line, grams: terms[index]?.grams ?? line.grams })),
  )
  const weighed = achievedLevel(terms, batch.sharedErrors)
  const handled = achievedLevel([...terms, ...handTerms], batch.sharedErrors)
  if (!weighed || !handled) return { ok: false, reason: 'nothing-logged' }
  return { ok: true, weighed, handled, atFourteen, loggedLines, allLines: counted.length }
}

/** Whether a logged weight is of this line of the weigh sheet: a ripe starter by its preferment. */
export function isOf(line: WeighLine, { ingredientId, prefermentId }: LoggedWeight): boolean {
  if (line.what === 'starter') return ingredientId === line.prefermentId
  return ingredientId === line.ingredientId && prefermentId === line.prefermentId
}

function workedTerms(batch: BatchWeights, acts: ActsOn, worked: WorkedIn): LevelTerm[] {
  const amounts = [
    ['dusting-flour', worked.dustingFlourGrams],
    ['hand-water', worked.handWaterGrams],
    ['oil', worked.oilGrams],
  ] as const
  return amounts.map(([what, grams]) => {
    const share = workedInShare(batch.formula, acts, what) ?? { above: 0, below: 0 }
    return { ...share, grams, uncertaintyGrams: 0 }
  })
}
