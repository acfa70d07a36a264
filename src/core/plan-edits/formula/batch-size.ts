import { batchGrams } from '@/core/formula/batch-grams.ts'
import type { BatchSize } from '@/core/formula/formula-record.ts'
import { inFormula } from '@/core/plan-edits/parts/in-part.ts'
import { mostGrams } from '@/core/record/quantity.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/** The plan with its batches sized anew. */
export const withBatchSize = (plan: Plan, batchSize: BatchSize): Plan =>
  inFormula(plan, (formula) => ({ ...formula, batchSize }))

/** The plan with the same batch said another way: from its flour, or from its pieces, two of them to start with. */
export function withBatchSizedBy(plan: Plan, by: BatchSize['by']): Plan {
  if (by === plan.formula.batchSize.by) return plan
  const grams = batchGrams(plan.formula)
  const whole = (mass: number) => Math.min(mostGrams, Math.round(mass))
  return withBatchSize(
    plan,
    by === 'flour'
      ? { by, flourGrams: whole(grams.flourGrams) || 500 }
      : { by, pieces: 2, pieceGrams: whole(grams.doughGrams / 2) || 250, lossPercent: 0 },
  )
}
