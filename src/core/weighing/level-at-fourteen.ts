import type { Formula } from '@/core/formula/formula-record.ts'
import { flourAtAgreedMoisture } from '@/core/kitchen/flour-moisture.ts'
import type { ActsOn } from '@/core/trial/factor.ts'
import type { WeighLine } from './batch-weights.ts'

type MoistureOf = (flour: { flourLotId?: string }) => number | undefined
type Part = Pick<WeighLine, 'ingredientId' | 'prefermentId'>

/**
 * Moisture, in %, of the flour in a part of the dough: a flour's own, that of a ripe starter by its flours' shares. Null without
 * flour, and where a bag's moisture is not known.
 */
export function moistureOfPart(
  { ingredients, preferments }: Pick<Formula, 'ingredients' | 'preferments'>,
  { ingredientId, prefermentId }: Part,
  moistureOf: MoistureOf,
): number | null {
  const flourOf = (id: string | null) =>
    ingredients.find((one) => one.id === id && one.kind === 'flour')
  if (ingredientId !== null) {
    const flour = flourOf(ingredientId)
    return flour ? (moistureOf(flour) ?? null) : null
  }
  let [grams, water] = [0, 0]
  for (const part of preferments.find(({ id }) => id === prefermentId)?.parts ?? []) {
    const flour = flourOf(part.ingredientId)
    if (!flour || part.percent === 0) continue
    const moisture = moistureOf(flour)
    if (moisture === undefined) return null
    grams += part.percent
    water += part.percent * moisture
  }
  return grams > 0 ? water / grams : null
}

/**
 * The hydration that these weights would be with flour of 14 % moisture: the same dough, with a gram of flour at M % counted as
 * (100 − M)/86 g of flour and the rest as water. One point of moisture is about 1.9 points of water at 65 % (the conversion of
 * AACC 54-21 and a mill's guide; the method's text from memory). Null for another factor, and where a flour's moisture is not known.
 */
export function levelAtFourteen(
  acts: ActsOn,
  lines: readonly Pick<WeighLine, 'share' | 'grams' | 'flourMoisturePercent'>[],
): number | null {
  if (acts.on !== 'hydration') return null
  let [above, below] = [0, 0]
  for (const { share, grams, flourMoisturePercent } of lines) {
    if (!share || grams === 0) continue
    const flour = share.below * grams
    if (flour > 0 && flourMoisturePercent === null) return null
    const kept = flourMoisturePercent === null ? 1 : flourAtAgreedMoisture(flourMoisturePercent)
    above += share.above * grams + flour * (1 - kept)
    below += flour * kept
  }
  return below > 0 ? (100 * above) / below : null
}
