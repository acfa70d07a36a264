import type { IngredientKind } from '@/core/formula/formula-record.ts'
import type { YeastForm } from '@/core/formula/yeast-conversion.ts'
import type { Heading } from './headings.ts'
import type { AsideReason, Stated } from './line-purpose.ts'
import type { LineTrouble } from './line-trouble.ts'

/** Why something is asked of the baker instead of guessed. */
export type QuestionReason =
  | LineTrouble
  | 'unknown-kind'
  | 'hydration-unsaid'
  | 'build-unsaid'
  | 'in-a-sentence'
  | 'percent-without-flour'
  | 'percent-of-which-flour'
  | 'weight-without-flour'
  | 'no-flour-at-all'
  | 'duplicate'
  | 'more-than-built'

/** An amount as written: a weight, or a percent of the flour. */
export type Amount = { grams: number; percent: null } | { grams: null; percent: number }

export interface Section extends Heading {
  at: number
  /** The whole that stands in its heading, g. */
  statedGrams: number | null
}

/** What one line, or a part of it, is to the formula. */
export type Entry =
  | {
      is: 'ingredient'
      name: string
      kind: IngredientKind
      amount: Amount
      besidePercent: number | null
      fromVolume: boolean
      /** What the line says of its yeast; null where it says none. */
      yeastForm: YeastForm | null
      section: number
    }
  | {
      is: 'preferment'
      name: string
      /** Null: all of what was built. */
      amount: Amount | null
      hydrationPercent: number | null
      build: { name: string; kind: IngredientKind; grams: number }[]
      besidePercent: number | null
      section: number
      /** The line with its hydration written in, to be taken by a press. */
      mends: string[]
    }
  | { is: 'aside'; why: AsideReason; text: string }
  | {
      is: 'question'
      why: QuestionReason
      name: string
      kind: IngredientKind | null
      /** Whole lines to put in place of this one, each by a press. */
      mends: string[]
    }

export interface ReadRow {
  line: number
  text: string
  entries: Entry[]
}

export interface PastedText {
  rows: ReadRow[]
  sections: Section[]
  stated: { stated: Stated; section: number }[]
  severalColumns: boolean
}
