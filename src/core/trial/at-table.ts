import * as z from 'zod/mini'
import { countTo, listOf } from '@/core/record/count.ts'
import { idShape } from '@/core/record/id-and-stamp.ts'
import { most } from '@/core/record/most.ts'
import { nameShape } from '@/core/record/text.ts'

const seconds = z.number().check(z.int(), z.gte(0), z.lte(3600))

/** How servings that rested are offered, beyond their order. What is left out is not done. */
export const atTableShape = z.strictObject({
  /**
   * Levels served once more under a second code in the first flight: one of them is a hidden duplicate among the others; all
   * of them make a second go after the first. How a taster repeats what they said is read from the two.
   */
  again: z.exactOptional(listOf(idShape, { most: most.levels })),
  /** From one serving to the next: water, plain bread, and this many seconds. */
  restSeconds: z.exactOptional(seconds),
  /** After so many servings a longer pause, of `pauseSeconds`. */
  pauseAfter: z.exactOptional(countTo(most.piecesOfSession)),
  pauseSeconds: z.exactOptional(seconds),
  /** At the end each taster is asked which serving was the usual one: the answer tells whether blinding held. */
  asksUsual: z.exactOptional(z.boolean()),
  /**
   * When all is scored, each taster puts the samples in one order; in the baker's own words where they have some, and with or
   * without samples that share a place.
   */
  ranking: z.exactOptional(z.strictObject({ ties: z.boolean(), asks: z.exactOptional(nameShape) })),
  /**
   * Who tastes alone plates for themselves: samples on equal plates, the letter of its tub under each, shuffled with shut eyes.
   * Scored by plate; which letter lay under which is said when the plates are turned.
   */
  shuffledPlates: z.exactOptional(z.boolean()),
  /**
   * Who weighs tastes too: what differs between the doughs waits in lidded cups by ticket, shuffled before letters are laid on.
   * Which level a letter is stays unknown until the tickets are typed in.
   */
  cups: z.exactOptional(z.boolean()),
})

export type AtTable = z.infer<typeof atTableShape>
export type RankingAsked = NonNullable<AtTable['ranking']>
