import * as z from 'zod/mini'
import { countTo, listOf } from '@/core/record/count.ts'
import { idShape } from '@/core/record/id-and-stamp.ts'
import { most } from '@/core/record/most.ts'
import { celsiusShape, gramsShape, percentShape, shareShape } from '@/core/record/quantity.ts'
import { nameShape } from '@/core/record/text.ts'

/** What an ingredient is to the dough: flour counts to the 100 %, water to the hydration, the others to neither. */
const ingredientKinds = ['flour', 'water', 'liquid', 'salt', 'yeast', 'fat', 'other'] as const

export const yeastForms = ['instant', 'active-dry', 'fresh'] as const

/**
 * One ingredient of the whole dough. `percent` is its overall baker's percentage, everything in preferments counted in;
 * the flours' percents sum to 100. `waterPercent` is the water in 100 g of it, for milk, egg, honey, butter and the like.
 */
const ingredientShape = z.strictObject({
  id: idShape,
  name: nameShape,
  kind: z.enum(ingredientKinds),
  percent: percentShape,
  waterPercent: z.exactOptional(shareShape),
  yeastForm: z.exactOptional(z.enum(yeastForms)),
  /** Its own temperature when it is not the room's, such as butter from the fridge. */
  celsius: z.exactOptional(celsiusShape),
  /** The bag it comes from, in the kitchen. */
  flourLotId: z.exactOptional(idShape),
})

/**
 * A part of the dough that ferments or soaks ahead. It takes `flourSharePercent` of the total flour; each part is a
 * percentage of the preferment's own flour, and the flour parts sum to 100.
 */
const prefermentShape = z.strictObject({
  id: idShape,
  name: nameShape,
  kind: z.enum(['poolish', 'biga', 'sponge', 'starter', 'soaker', 'other']),
  flourSharePercent: shareShape,
  parts: listOf(z.strictObject({ ingredientId: idShape, percent: percentShape }), {
    most: most.ingredients,
  }),
  celsius: z.exactOptional(celsiusShape),
  /** What clings to its jar, g: made in addition, and never in the dough. A ripe starter is weighed out, so it has none. */
  clingsGrams: z.exactOptional(gramsShape),
})

/** How much is made: from the flour of one batch, or from pieces and their mass with what hands and bowl keep. */
const batchSizeShape = z.discriminatedUnion('by', [
  z.strictObject({ by: z.literal('flour'), flourGrams: gramsShape }),
  z.strictObject({
    by: z.literal('pieces'),
    pieces: countTo(most.piecesOfBatch),
    pieceGrams: gramsShape,
    lossPercent: z.number().check(z.gte(0), z.lt(100)),
  }),
])

/** The baker's formula of one batch, overall view; preferment and final-dough views follow from it. */
export const formulaShape = z.strictObject({
  ingredients: listOf(ingredientShape, { most: most.ingredients }),
  preferments: listOf(prefermentShape, { most: most.preferments }),
  batchSize: batchSizeShape,
})

export type Ingredient = z.infer<typeof ingredientShape>
export type IngredientKind = Ingredient['kind']
export type Preferment = z.infer<typeof prefermentShape>
export type BatchSize = z.infer<typeof batchSizeShape>
export type Formula = z.infer<typeof formulaShape>
