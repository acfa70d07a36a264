import { batchGrams } from './batch-grams.ts'
import type { Formula } from './formula-record.ts'

/** The same formula for a batch of so much flour. */
export function resizeToFlour(formula: Formula, flourGrams: number): Formula {
  return { ...formula, batchSize: { by: 'flour', flourGrams } }
}

/** The same formula for a batch of so much dough: a batch sized by pieces keeps their number, else its flour follows. */
export function resizeToDough(formula: Formula, doughGrams: number): Formula {
  const now = batchGrams(formula)
  const factor = now.doughGrams > 0 ? doughGrams / now.doughGrams : 0
  const size = formula.batchSize
  if (size.by === 'flour') return resizeToFlour(formula, size.flourGrams * factor)
  return { ...formula, batchSize: { ...size, pieceGrams: size.pieceGrams * factor } }
}
