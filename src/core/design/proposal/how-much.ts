/** How much somebody can do: what bounds a proposal. */
export interface HowMuch {
  /** Days on which doughs are made and tasted. */
  days: number
  /** Groups that each make every level on such a day, and so count as a session each; 1 outside of a class. */
  benches: number
  /** Mouths, the baker's among them where the baker tastes. */
  tasters: number
  /** Doughs one pair of hands (one bench) makes in a day. */
  doughs: number
  /** Samples for one mouth in a day; beyond six with a pause between. */
  bites: number
}

/**
 * What people mean by how much they can do (common practice, no source): a first guess, to be corrected by who asks. Alone three doughs and
 * six bites; a class makes fewer doughs a bench, tastes all, and pauses once.
 */
export const usualHowMuch = {
  'one-evening-alone': { days: 1, benches: 1, tasters: 1, doughs: 3, bites: 6 },
  'two-fridays': { days: 2, benches: 1, tasters: 7, doughs: 4, bites: 6 },
  class: { days: 1, benches: 4, tasters: 12, doughs: 3, bites: 12 },
} as const satisfies Record<string, HowMuch>
export type UsualHowMuch = keyof typeof usualHowMuch
