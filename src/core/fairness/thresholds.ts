import type { FairnessCode } from './fairness-data.ts'
import type { FairnessUnit } from './fairness-item.ts'

export interface Threshold {
  unit: FairnessUnit
  /** From this size on it is to be known, and from this one to be fixed; null: never. */
  know: number | null
  fix: number | null
  /** True when there is no authority behind it but common practice. */
  practice: boolean
}

const practice = (unit: FairnessUnit, know: number | null, fix: number | null): Threshold => ({
  unit,
  know,
  fix,
  practice: true,
})

const sourced = (...row: Parameters<typeof practice>): Threshold => ({
  ...practice(...row),
  practice: false,
})

/**
 * How large each item must be to be known about or fixed: the one table behind every severity. Where the sizes come from is
 * told, item by item, by `thresholdSources` of the wording.
 */
export const thresholds: Readonly<Record<FairnessCode, Threshold>> = {
  'water-temperature': practice('°C', 0.5, 1),
  'water-past-limits': practice('°C', 0.01, 5),
  'piece-mass': practice('%', 2, 5),
  'flour-per-piece': practice('%', 5, null),
  'salt-in-water': practice('%', 10, null),
  'yeast-in-water': practice('%', 10, null),
  'water-rides': practice('points', 0.5, 2),
  'choice-water': practice('count', 1, null),
  'starter-corrected': practice('points', null, null),
  'starter-age': practice('min', 30, 90),
  'stock-age': practice('min', 20, 60),
  ripeness: practice('%', 5, 25),
  'bake-ends': practice('%', 5, 40),
  'oven-change': practice('°C', 5, null),
  'fold-strength': practice('count', 1, null),
  'flour-water': practice('%', 5, null),
  'rest-in-mix': practice('°C', 0.5, null),
  'second-water': practice('count', 1, null),
  'stock-stages': practice('count', 1, 1),
  'steps-differ': practice('min', 2, 10),
  doughs: practice('count', 1, null),
  'dough-order': sourced('correlation', 0.3, 0.7),
  'bake-order': sourced('correlation', 0.3, 0.7),
  'mouth-order': sourced('correlation', 0.3, 0.7),
  load: sourced('correlation', 0.3, 0.7),
  'oven-place': sourced('correlation', 0.3, 0.7),
  'piece-before': practice('count', 2, null),
  'age-at-baking': practice('%', 5, 10),
  'oven-to-mouth': practice('min', 1, 5),
  'age-at-tasting': practice('%', 10, 33),
  'levels-blur': practice('share', 0.25, 0.5),
  'no-scale': practice('count', 1, null),
  'coarse-dose': sourced('%', 5, 10),
  'bench-flour': practice('share', 0.25, null),
  'mixer-size': practice('g', 1, 200),
  'several-hands': practice('count', 1, null),
  'key-keeper': practice('count', 1, null),
  'knowing-tasters': practice('share', 0.01, 0.5),
  'tasters-talk': practice('count', 1, 1),
  'many-samples': practice('count', 7, 11),
  'one-session': sourced('count', 1, 1),
  'few-tasters': practice('times the margin', 1, 4),
  'few-sessions': practice('times the margin', 1, 4),
  'no-expectation': practice('count', 1, null),
  'no-main-response': practice('count', 1, 1),
  'no-margin': practice('count', 1, null),
  'no-control': practice('count', 1, null),
  'flour-lots': practice('count', 2, 2),
  'levels-wide': practice('%', 75, null),
  'outside-usual': practice('points', 0.001, null),
  'serving-rule': practice('count', 1, 2),
  'baker-scores': practice('count', 1, 1),
  'no-warm-up': practice('count', 1, null),
  'dough-warmth': practice('°C', 0.5, 1),
  'piece-warmth': practice('°C', 0.5, 1.5),
  'levels-handled': practice('share', 0.25, 0.5),
  'ferment-hours': practice('%', 5, 10),
  'age-baked': practice('%', 5, 10),
  'mouth-minutes': practice('min', 1, 5),
  'age-tasted': practice('%', 10, 33),
  'oven-floor': practice('°C', 10, 25),
  'piece-before-done': practice('count', 2, null),
  'failures-by-level': practice('%', 10, 25),
  practice: practice('%', 50, null),
  'folds-done': practice('count', 1, 1),
  departed: practice('count', 1, null),
  'tasters-missing': practice('count', 1, null),
  'cut-warm': practice('%', 10, 33),
  peeks: practice('count', 1, null),
  'early-looks': practice('count', 1, null),
  'added-sessions': practice('count', 1, null),
  'closed-early': practice('count', 1, null),
}
