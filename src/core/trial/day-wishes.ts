import * as z from 'zod/mini'
import { countShape, countTo, listOf } from '@/core/record/count.ts'
import { atShape } from '@/core/record/id-and-stamp.ts'
import { most } from '@/core/record/most.ts'
import { secondsShape } from '@/core/record/quantity.ts'

/** Minutes from midnight. */
const timeOfDayShape = z.number().check(z.int(), z.gte(0), z.lt(24 * 60))

/** The moment a trial day is planned from, UTC ms: backwards from when people eat, or forwards from the first hand. */
const fixedMomentShape = z.strictObject({ what: z.enum(['eat', 'start']), at: atShape })

/** Hours in which nobody works, every night. */
const quietShape = z.strictObject({ fromMinutes: timeOfDayShape, toMinutes: timeOfDayShape })

/** One more pair of hands from one moment to another, UTC ms. */
const helperShape = z.strictObject({ fromAt: atShape, untilAt: atShape })

/**
 * The times that were found for a day and are kept: so many seconds after `originAt` (UTC ms) each thing to do begins, in the
 * order in which the day lists them. They hold for the very day they were found for, which `dayKey` tells.
 */
const keptTimesShape = z.strictObject({
  session: countShape,
  dayKey: z.string().check(z.regex(/^[0-9a-f]{16}$/)),
  originAt: atShape,
  beginSeconds: listOf(z.number().check(z.int(), z.gte(0), z.lte(200 * 86_400)), { most: 20_000 }),
})

/** Kelvin by which an oven grows hotter or cooler, in seconds for each. */
const paceShape = z.number().check(z.gte(0), z.lte(600))

/** How a trial's day is to lie by the clock, and what of kitchen and people it may use beside the plan's own hands and places. */
export const dayWishesShape = z.strictObject({
  /** Left out where no moment is fixed: the day then counts from its first hand. */
  fixed: z.exactOptional(fixedMomentShape),
  quiet: z.exactOptional(quietShape),
  helpers: z.exactOptional(listOf(helperShape, { most: most.pairsOfHands })),
  mixers: z.exactOptional(countTo(most.pairsOfHands)),
  /** Doughs, or pieces, that the fridge holds at once; left out where it holds all. */
  fridgePlaces: z.exactOptional(countTo(most.piecesOfSession)),
  oven: z.exactOptional(
    z.strictObject({ heatSecondsPerKelvin: paceShape, coolSecondsPerKelvin: paceShape }),
  ),
  /** Until the oven is as hot again after a load, where the bake itself does not say. */
  recoverySeconds: z.exactOptional(secondsShape),
  kept: z.exactOptional(keptTimesShape),
})

export type DayWishes = z.infer<typeof dayWishesShape>
export type QuietHours = z.infer<typeof quietShape>
export type KeptTimes = z.infer<typeof keptTimesShape>
