/** `stop` keeps a plan from being worked; `ask` wants a second look and forbids nothing. */
export type Severity = 'stop' | 'ask'

export type FormulaTrouble =
  | { reason: 'no-ingredients' | 'no-flour' | 'no-water' | 'no-dough' }
  | { reason: 'flours-do-not-sum'; sumPercent: number }
  | { reason: 'not-a-number'; ingredientId?: string }
  | { reason: 'negative-percent'; ingredientId: string; percent: number }
  | {
      reason: 'percent-past-sense'
      ingredientId: string
      percent: number
      usualMostPercent: number
    }
  | { reason: 'nameless-ingredient'; ingredientId: string }
  | { reason: 'duplicate-ingredient'; ingredientId: string; name: string }
  | {
      reason: 'hydration-unusual'
      hydrationPercent: number
      leastPercent: number
      mostPercent: number
    }
  | { reason: 'preferment-part-missing'; prefermentId: string; ingredientId: string }
  | { reason: 'preferment-flour-does-not-sum'; prefermentId: string; sumPercent: number }
  | { reason: 'preferment-without-flour'; prefermentId: string }
  | { reason: 'preferment-flour-past-all'; sumPercent: number }
  | {
      reason: 'preferment-holds-more'
      ingredientId: string
      name: string
      overallGrams: number
      prefermentGrams: number
    }

/** A problem of a formula; `path` is a JSON Pointer into the formula. */
export type FormulaProblem = FormulaTrouble & { path: string; severity: Severity }
