import type { Formula } from '@/core/formula/formula-record.ts'
import type { Yield } from './house-record.ts'
import { panSquareCentimetres, tinMillilitres } from './pan-geometry.ts'

/** Dough for each millilitre of a loaf tin, g (common practice, no source: a yeasted tin loaf; denser rye takes more). */
export const usualGramsPerMillilitre = 0.5
/** Dough for each square centimetre of a flat pan, g (common practice, no source: about 2 cm of baked crumb). */
export const usualGramsPerSquareCentimetre = 0.7

/** How heavy each piece of a yield is before the bake, g; null where only the flour is said. */
export function pieceGramsOf(made: Yield): number | null {
  switch (made.by) {
    case 'pieces':
      return made.pieceGrams
    case 'tins':
      return tinMillilitres(made.tin) * made.gramsPerMillilitre
    case 'pans':
      return panSquareCentimetres(made.pan) * made.gramsPerSquareCentimetre
    case 'flour':
      return null
  }
}

/** The formula sized for a yield. */
export function formulaAtYield(formula: Formula, made: Yield): Formula {
  if (made.by === 'flour')
    return { ...formula, batchSize: { by: 'flour', flourGrams: made.flourGrams } }
  const { pieces, lossPercent } = made
  const pieceGrams = pieceGramsOf(made) ?? 0
  return { ...formula, batchSize: { by: 'pieces', pieces, pieceGrams, lossPercent } }
}

/** The yield that a formula's own batch size says. */
export function yieldOfFormula({ batchSize }: Formula): Yield {
  return batchSize
}
