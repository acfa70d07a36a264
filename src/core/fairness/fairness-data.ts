import type { MinutesEnds } from '@/core/dough-temperature/proof-minutes.ts'
import type { StepKind } from '@/core/trial/step.ts'

/** The lowest and highest over the levels, in the item's own unit or as the name says. */
interface Ends {
  low: number
  high: number
}

/** How an order, a load or a place goes with the levels; `against` is what it goes with most. */
export interface OrderData {
  against: 'level' | 'middle' | 'option'
  sessions: number
  orders: number
}

type Bare = Record<string, never>

/** What each item's sentence needs beside its amount. The keys are all the codes there are. */
export interface FairnessData {
  'water-temperature': {
    state: 'matched' | 'one-water' | 'no-water' | 'some-water' | 'unknown'
    /** Of proof, by the usual gassing rate and by the slowest and quickest that were seen. */
    minutes: number | null
    minutesEnds: MinutesEnds | null
  }
  'water-past-limits': { levelId: string | null; waterCelsius: number } & Ends
  'piece-mass': { of: 'piece' | 'dough'; flourPercentOtherwise: number } & Ends
  'flour-per-piece': { of: 'piece' | 'dough'; massPercentOtherwise: number } & Ends
  'salt-in-water': Ends
  'yeast-in-water': Ends
  'water-rides': Ends
  'choice-water': { own: boolean }
  'starter-corrected': { levelId: string; lessFlourGrams: number; lessWaterGrams: number }
  'starter-age': { name: string }
  'stock-age': { ingredientId: string }
  ripeness: {
    endsBy: 'clock' | 'mark'
    quicker: 'high' | 'low' | 'unknown'
    stepIds: string[]
  }
  'steps-differ': Ends
  'bake-ends': {
    of: 'water' | 'mass' | 'temperature'
    by: 'clock' | 'core' | 'mark'
    minutes: number
  } & Ends
  'oven-change': Ends
  'fold-strength': { by: 'count' | 'strength' }
  /** Points of water that the levels would want apart, at least and at most; known from the lots' own figures, given to each level as its own. */
  'flour-water': { leastPoints: number; mostPoints: number; known: boolean; own: boolean }
  /** Minutes that doughs stand before their mix ends, and how far, °C, that brings them from where they were: most of all levels. */
  'rest-in-mix': { driftCelsius: number; roomCelsius: number; carried: boolean } & Ends
  /** Water that goes in after the first: grams in a batch, at least and at most, and its temperature where it is said. */
  'second-water': { name: string; celsius: number | null } & Ends
  'stock-stages': { ingredientId: string; preferment: string }
  doughs: { doughs: 'one' | 'apart'; time: boolean }
  'dough-order': OrderData
  'bake-order': OrderData
  'mouth-order': OrderData
  load: OrderData
  'oven-place': OrderData
  'piece-before': Ends
  'age-at-baking': Ends
  'oven-to-mouth': Ends
  'age-at-tasting': Ends
  'levels-blur': { lowerLevelId: string; upperLevelId: string; gap: number; blur: number }
  'no-scale': Bare
  'coarse-dose': { ingredientId: string; smallestGrams: number | null; shared: boolean }
  'bench-flour': {
    fiveGrams: number
    tenGrams: number
    wetFive: number
    gap: number
    intoGrams: number
  }
  'mixer-size': { fit: 'too-little' | 'too-much'; doughGrams: number; limitGrams: number }
  'several-hands': Bare
  'key-keeper': Bare
  'knowing-tasters': { knowing: number; tasters: number }
  'tasters-talk': Bare
  'many-samples': { usualMost: number }
  'one-session': { unit: 'batch' | 'piece'; flights: number }
  'few-tasters': { wouldShow: number; margin: number }
  'few-sessions': { wouldShow: number; margin: number }
  'no-expectation': Bare
  'no-main-response': Bare
  'no-margin': Bare
  'no-control': { choice: boolean }
  'flour-lots': { name: string }
  'levels-wide': { of: 'hydration' | 'yeast'; usualLow: number; usualHigh: number }
  'outside-usual': { of: 'hydration' | 'salt' | 'yeast' } & Ends
  'serving-rule': { topped: boolean }
  'baker-scores': { name: string }
  'no-warm-up': Bare
  /** Hours at 24 °C. */
  'ferment-hours': { batches: number } & Ends
  'dough-warmth': {
    batches: number
    minutes: number | null
    minutesEnds: MinutesEnds | null
  } & Ends
  'piece-warmth': { pieces: number } & Ends
  'levels-handled': {
    levelId: string
    planned: number
    handled: number
    gap: number
    dustingGrams: number
  }
  'age-baked': { pieces: number } & Ends
  'mouth-minutes': { servings: number } & Ends
  'age-tasted': { servings: number } & Ends
  'oven-floor': { readings: number } & Ends
  'piece-before-done': Ends
  'failures-by-level': { failed: number; pieces: number } & Ends
  practice: { early: number; late: number }
  'folds-done': { stepId: string; kind: StepKind } & Ends
  departed: { order: number; wait: number; weight: number; steps: number }
  'tasters-missing': { late: number; left: number; declined: number }
  'cut-warm': { plannedSeconds: number; shortestSeconds: number; pieces: number }
  peeks: Bare
  'early-looks': Bare
  'added-sessions': Bare
  'closed-early': Bare
}

export type FairnessCode = keyof FairnessData
