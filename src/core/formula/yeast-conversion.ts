import type { yeastForms } from './formula-record.ts'

export type YeastForm = (typeof yeastForms)[number]

/**
 * Usual factors by weight from fresh yeast: active dry 0.4, instant 0.33 (seen in a professional baking text's table of
 * fresh-to-dry conversions). Between the dry forms 0.75 is usual (common practice), though 0.33 / 0.4 would be 0.825, and
 * some tables give 0.4 for instant: published factors do not agree, so the factor used is always named.
 */
const factors = {
  'fresh>active-dry': { factor: 0.4, source: 'seen', disagreement: null },
  'fresh>instant': { factor: 0.33, source: 'seen', disagreement: 0.4 },
  'active-dry>instant': { factor: 0.75, source: 'practice', disagreement: 0.825 },
} as const

export interface ConvertedYeast {
  grams: number
  /** What the grams were multiplied by. */
  factor: number
  source: 'seen' | 'practice' | 'same'
  /** Another published factor for the same exchange; null where none was met. */
  alsoPublished: number | null
}

/** The usual amount of one form of yeast in place of another, with the factor that was used. Water is left alone. */
export function convertYeast(grams: number, from: YeastForm, to: YeastForm): ConvertedYeast {
  if (from === to) return { grams, factor: 1, source: 'same', alsoPublished: null }
  const key = `${from}>${to}`
  const back = `${to}>${from}`
  for (const [pair, { factor, source, disagreement }] of Object.entries(factors)) {
    if (pair === key) return { grams: grams * factor, factor, source, alsoPublished: disagreement }
    if (pair === back) {
      const alsoPublished = disagreement === null ? null : 1 / disagreement
      return { grams: grams / factor, factor: 1 / factor, source, alsoPublished }
    }
  }
  throw new Error(`no factor between ${from} and ${to}`)
}
