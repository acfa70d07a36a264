import { massUnit, shownMass, typedGrams } from '@/core/units/mass-text.ts'

type Check = (value: number) => string | undefined

/** What a field that takes a weight needs, in the person's unit; the weight itself stays in grams. */
export interface MassEntry {
  unit: 'g' | 'oz'
  shown: (grams: number | null) => number | null
  grams: (typed: number) => number
  /** A check of grams as one of what was typed. */
  check: (ofGrams: Check) => Check
  /** The key of an unfinished text: one typed in ounces is not read again as grams. */
  draftKey: (key: string) => string
}

/** A field for weights in the unit that the person chose. */
export function massEntry(): MassEntry {
  const unit = massUnit()
  return {
    unit,
    shown: (grams) => (grams === null ? null : shownMass(grams)),
    grams: typedGrams,
    check: (ofGrams) => (typed) => ofGrams(typedGrams(typed)),
    draftKey: (key) => (unit === 'g' ? key : `${key}/ounces`),
  }
}
