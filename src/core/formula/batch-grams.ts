import type { BatchSize, Formula } from './formula-record.ts'
import { flourPercent, totalPercent } from './totals.ts'

export interface BatchGrams {
  flourGrams: number
  doughGrams: number
  /** Pieces and the mass of each; null when the batch was sized by its flour. */
  pieces: number | null
  pieceGrams: number | null
}

/**
 * How much flour and dough one batch takes. By pieces, the dough is pieces × mass / (1 - loss): the loss is the part of
 * the mixed dough that stays on hands and bowl. Flour = dough × flour % / total %. A formula without percents gives zeros;
 * `formulaProblems` says what is wrong with it.
 */
export function batchGrams(formula: Formula): BatchGrams {
  const size = formula.batchSize
  const total = totalPercent(formula)
  const flour = flourPercent(formula)
  if (size.by === 'flour') {
    const doughGrams = flour > 0 ? (size.flourGrams * total) / flour : 0
    return { flourGrams: size.flourGrams, doughGrams, pieces: null, pieceGrams: null }
  }
  const doughGrams = total > 0 ? doughOfPieces(size) : 0
  const flourGrams = total > 0 ? (doughGrams * flour) / total : 0
  return { flourGrams, doughGrams, pieces: size.pieces, pieceGrams: size.pieceGrams }
}

/** Dough to mix for pieces of a mass, with what hands and bowl keep. */
function doughOfPieces(size: Extract<BatchSize, { by: 'pieces' }>): number {
  return (size.pieces * size.pieceGrams) / (1 - size.lossPercent / 100)
}
