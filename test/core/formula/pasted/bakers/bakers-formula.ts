/**
 * Formulas of an invented neighbourhood bake club, each written as some baker would, with its answer worked by hand: grams
 * of each kind over the whole dough, preferments' flour and water counted in (where only percents stand, of 1000 g flour).
 */
export interface BakersFormula {
  text: string
  /** flour F, water W, salt S, yeast Y, liquid L, fat A, other O, in grams, such as 'F500 W350 S10 Y5'. */
  is: string
  /** Preferments by name: percent of all flour, and its hydration. */
  ahead?: Record<string, [number, number]>
  /** Questions that must be asked, by reason. */
  asks?: string[]
  /** Figures of the text that do not agree. */
  doubts?: string[]
  yeast?: 'fresh' | 'instant' | 'active-dry'
}
