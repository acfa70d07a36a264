import type { LevelShare } from '@/core/trial/level-ratio.ts'

/** A weight in a dough: its grams, what a gram of it adds above and below the line of the level, its reading error. */
export interface LevelTerm extends LevelShare {
  grams: number
  uncertaintyGrams: number
}

/** An error that the batches share, such as a stock's strength: what one unit of it adds above and below the line. */
export interface SharedError extends LevelShare {
  uncertainty: number
}

export interface Achieved {
  /** The level these weights make, in the factor's own unit. */
  value: number
  /** Standard uncertainty from all weights, and from those that the batches do not share. */
  uncertainty: number
  ownUncertainty: number
  /** U = 2 u: about 95 %. */
  expandedUncertainty: number
}

/**
 * The level that weights make and how well they make it: level = 100 × N / D with N and D linear in the weights, so the
 * partial derivative to a weight is 100 (a D - N b) / D² (law of propagation, JCGM 100:2008, 5.1, from memory). Every weight
 * enters once: a starter through its water and flour together. Null without flour.
 */
export function achievedLevel(
  terms: readonly LevelTerm[],
  sharedErrors: readonly SharedError[] = [],
): Achieved | null {
  const above = terms.reduce((sum, term) => sum + term.above * term.grams, 0)
  const below = terms.reduce((sum, term) => sum + term.below * term.grams, 0)
  if (!(below > 0)) return null
  const moves = (share: LevelShare) =>
    (100 * (share.above * below - above * share.below)) / below ** 2
  const own = terms.reduce((sum, term) => sum + (moves(term) * term.uncertaintyGrams) ** 2, 0)
  const common = sharedErrors.reduce((sum, one) => sum + (moves(one) * one.uncertainty) ** 2, 0)
  return achieved((100 * above) / below, Math.sqrt(own), Math.sqrt(own + common))
}

/** A level read straight off one scale, such as the mass of a piece. */
export function achieved(
  value: number,
  ownUncertainty: number,
  uncertainty = ownUncertainty,
): Achieved {
  return { value, uncertainty, ownUncertainty, expandedUncertainty: 2 * uncertainty }
}
