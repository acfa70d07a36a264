import type { FairnessCode } from '@/core/fairness/fairness-data.ts'

/**
 * How an item moves the answer, and so how its effect is reckoned, in points of a nine-point scale of liking:
 * by its own size, by a yes or no, as a part of what the levels do, as something that may stay unseen, or as what takes the verdict away.
 */
export type EffectRate =
  | { by: 'size'; through: EffectThrough; pointsEach: number }
  | { by: 'yes'; through: EffectThrough; points: number }
  /** A share of the gap between levels, worth that share of what one gap does. */
  | { by: 'gap' }
  /** Ripeness by the factor itself: percent of gas for each percent that the levels lie apart. */
  | { by: 'gassing' }
  /** What two doughs of one level differ by, by chance alone. */
  | { by: 'one-dough' }
  /** The difference that may stay unseen. */
  | { by: 'unseen' }
  | { by: 'no-verdict' }

export type EffectThrough =
  | 'ripeness'
  | 'freshness'
  | 'staling'
  | 'baking'
  | 'strength'
  | 'order'
  | 'blindness'
  | 'handling'
  | 'words'

/** A tenth more or less of proof: points of liking for each percent. */
export const pointsOfRipeness = 0.04
/** Percent of gas for a degree near 24 °C, by the gassing rate. */
const gasOfDegree = 7.7
/** What the factor is taken to do from the first to the last level, while nobody knows. */
export const pointsOfFactor = 2
/** The first sample against the last: what an order that follows the levels entirely may add. */
const pointsOfOrder = 0.5
/** A hot piece goes stale by so many points a minute. */
const pointsOfMinute = 0.08

const sized = (through: EffectThrough, pointsEach: number): EffectRate => ({
  by: 'size',
  through,
  pointsEach,
})
const yes = (through: EffectThrough, points: number): EffectRate => ({ by: 'yes', through, points })
const ripe = (percentEach: number) => sized('ripeness', percentEach * pointsOfRipeness)
const order = sized('order', pointsOfOrder)

/**
 * Points of liking for each unit of an item's size (the unit of its threshold). All common practice and without a source: they are for
 * ranking the items of one plan against each other, no forecast of a score.
 */
export const effectRates: Readonly<Record<FairnessCode, EffectRate>> = {
  'water-temperature': ripe(gasOfDegree),
  'water-past-limits': sized('ripeness', 0.2),
  'piece-mass': sized('baking', 0.05),
  'flour-per-piece': sized('baking', 0.02),
  'salt-in-water': sized('strength', 0.01),
  'yeast-in-water': ripe(0.5),
  'water-rides': sized('strength', 0.15),
  'choice-water': yes('words', 0.1),
  'starter-corrected': yes('words', 0),
  'starter-age': sized('ripeness', 0.005),
  'stock-age': sized('ripeness', 0.01),
  ripeness: { by: 'gassing' },
  'bake-ends': sized('baking', 0.03),
  'oven-change': sized('baking', 0.01),
  'fold-strength': yes('handling', 0.3),
  'flour-water': sized('strength', 0.02),
  'rest-in-mix': yes('words', 0),
  'second-water': yes('handling', 0.1),
  'stock-stages': yes('ripeness', 0.3),
  'steps-differ': sized('ripeness', 0.02),
  doughs: yes('handling', 0.2),
  'dough-order': order,
  'bake-order': order,
  'mouth-order': order,
  load: order,
  'oven-place': order,
  'piece-before': yes('order', 0.1),
  'age-at-baking': ripe(1),
  'oven-to-mouth': sized('freshness', pointsOfMinute),
  'age-at-tasting': sized('staling', 0.015),
  'levels-blur': { by: 'gap' },
  'no-scale': yes('words', 0.5),
  'coarse-dose': ripe(0.5),
  'bench-flour': { by: 'gap' },
  'mixer-size': yes('handling', 0.3),
  'several-hands': yes('handling', 0.3),
  'key-keeper': yes('blindness', 0.2),
  'knowing-tasters': sized('blindness', 1),
  'tasters-talk': yes('blindness', 0.5),
  'many-samples': sized('order', 0.03),
  'one-session': { by: 'one-dough' },
  'few-tasters': { by: 'unseen' },
  'few-sessions': { by: 'unseen' },
  'no-expectation': yes('words', 0.4),
  'no-main-response': { by: 'no-verdict' },
  'no-margin': yes('words', 0.5),
  'no-control': yes('words', 0.2),
  'flour-lots': yes('strength', 0.3),
  'levels-wide': yes('words', 0.1),
  'outside-usual': yes('words', 0.1),
  'serving-rule': yes('handling', 0.3),
  'baker-scores': yes('blindness', 1),
  'no-warm-up': yes('order', 0.2),
  'ferment-hours': ripe(1),
  'dough-warmth': ripe(gasOfDegree),
  'piece-warmth': ripe(gasOfDegree / 2),
  'levels-handled': { by: 'gap' },
  'age-baked': ripe(1),
  'mouth-minutes': sized('freshness', pointsOfMinute),
  'age-tasted': sized('staling', 0.015),
  'oven-floor': sized('baking', 0.02),
  'piece-before-done': yes('order', 0.1),
  'failures-by-level': sized('handling', 0.02),
  practice: sized('handling', 0.005),
  'folds-done': sized('handling', 0.3),
  departed: yes('handling', 0.1),
  'tasters-missing': sized('words', 0.05),
  'cut-warm': sized('staling', 0.015),
  peeks: sized('blindness', 0.3),
  'early-looks': yes('words', 0.1),
  'added-sessions': yes('words', 0.1),
  'closed-early': yes('words', 0.1),
}
