import * as z from 'zod/mini'
import { listOf } from '@/core/record/count.ts'
import { idShape } from '@/core/record/id-and-stamp.ts'
import { most } from '@/core/record/most.ts'
import { percentShape } from '@/core/record/quantity.ts'
import { nameShape, noteShape, shortNameShape } from '@/core/record/text.ts'

/** What one option of a choice swaps: a named flour or ingredient, a tool, or a step done or left out. */
const changeShape = z.discriminatedUnion('what', [
  z.strictObject({
    what: z.literal('ingredient'),
    ingredientId: idShape,
    name: nameShape,
    percent: z.exactOptional(percentShape),
  }),
  /** At its own water: the hydration of this option, or of this share of a flour, alone. */
  z.strictObject({ what: z.literal('hydration'), percent: percentShape }),
  z.strictObject({ what: z.literal('tool'), name: nameShape }),
  z.strictObject({ what: z.literal('step'), stepId: idShape, done: z.boolean() }),
  z.strictObject({ what: z.literal('note'), text: noteShape }),
])

/** The largest value of a level, either way. */
export const mostLevelValue = 1e6

/**
 * A value of the factor in its own unit, never converted; for a choice `value` is null and the label names the option,
 * `shortLabel` where a narrow rail has no room for it.
 */
export const levelShape = z.strictObject({
  id: idShape,
  value: z.nullable(z.number().check(z.gte(-mostLevelValue), z.lte(mostLevelValue))),
  label: nameShape,
  shortLabel: z.exactOptional(shortNameShape),
  control: z.boolean(),
  changes: z.exactOptional(listOf(changeShape, { most: most.changesOfLevel })),
})

export type Change = z.infer<typeof changeShape>
export type Level = z.infer<typeof levelShape>
