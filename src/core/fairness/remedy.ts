/** What can be done about an item. Those of the first group are applied by one press, the others are advice or happen by themselves. */
export type Remedy =
  | { code: 'match-water' }
  | { code: 'hold'; held: 'flour' | 'dough' | 'piece' }
  | { code: 'end-by-mark'; stepIds: string[] }
  | { code: 'add-flight' }
  | { code: 'drop-flight' }
  | { code: 'add-session' }
  | { code: 'reverse-next' }
  | { code: 'share-dose'; ingredientId: string; by: 'dry-mix' | 'stock' }
  | { code: 'equal-folds'; stepId: string; repeats: number }
  | { code: 'helper-keeps-key' }
  | { code: 'tasters-silent' }
  | { code: 'add-warm-up' }
  | { code: 'tasters-score'; responseId: string }
  | { code: 'one-dough' }
  | { code: 'mix-apart' }
  | { code: 'one-pair-of-hands' }
  | { code: 'end-by-core'; stepId: string; celsius: number }
  | { code: 'end-by-loss'; stepId: string }
  | { code: 'end-by-colour'; stepId: string }
  | { code: 'end-by-windowpane'; stepIds: string[] }
  | { code: 'own-waters'; waters: { levelId: string; percent: number }[] }
  | { code: AdviceCode }

/** Advice needs the baker's own hands or words; `reverses-itself` and `starter-corrected` are done by the notebook already. */
export const adviceCodes = [
  'reverses-itself',
  'starter-corrected',
  'enter-temperatures',
  'correct-water-by-reading',
  'warm-cold-ingredients',
  'say-own-water',
  'finer-scale',
  'levels-further-apart',
  'levels-closer',
  'larger-batches',
  'two-mixes',
  'more-tasters',
  'blind-tasters',
  'taste-later',
  'taste-timed',
  'dose-at-once',
  'weigh-bench-flour',
  'oil-or-water-on-bench',
  'blend-bags',
  'write-expectation',
  'choose-main-response',
  'name-margin',
  'mark-control',
  'write-serving-rule',
  'name-scale',
  'wait-for-oven-floor',
  'practise-first',
  'keep-findings-shut',
  'repeat-the-lost',
  'cool-longer',
  'follow-clock-plan',
  'weigh-bake-loss',
  'bake-in-blocks',
  'own-water-by-trying',
  'temper-second-water',
  'rest-covered',
] as const
export type AdviceCode = (typeof adviceCodes)[number]

const advice: ReadonlySet<string> = new Set(adviceCodes)

/** True when one press applies the remedy to the plan. */
export function isPress(remedy: Remedy): boolean {
  return !advice.has(remedy.code)
}
