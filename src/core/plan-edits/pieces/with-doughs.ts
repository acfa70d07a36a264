import { most } from '@/core/record/most.ts'
import { mostGrams } from '@/core/record/quantity.ts'
import type { Factor } from '@/core/trial/factor.ts'
import { piecesAskedOfBatch } from '@/core/trial/pieces-in-batch.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/**
 * The plan split elsewhere, or its levels mixed apart or divided from one dough, with a batch that grows or shrinks with the
 * pieces it must now give, so that a piece keeps its size. What splits at the mix is always mixed apart.
 */
export function withDoughs(
  plan: Plan,
  change: { splitsAt?: Factor['splitsAt']; doughs?: Plan['doughs'] },
): Plan {
  const splitsAt = change.splitsAt ?? plan.factor.splitsAt
  const doughs = splitsAt === 'mix' ? 'apart' : (change.doughs ?? plan.doughs)
  return withBatchFor(plan, { ...plan, factor: { ...plan.factor, splitsAt }, doughs })
}

/** The next plan with a batch as much larger or smaller than the plan's as the pieces are more or fewer. */
export function withBatchFor(plan: Plan, next: Plan): Plan {
  const [before, after] = [piecesAskedOfBatch(plan), piecesAskedOfBatch(next)]
  const { batchSize } = next.formula
  if (before === after || before === 0 || after === 0) return next
  const size =
    batchSize.by === 'flour'
      ? { ...batchSize, flourGrams: Math.min(mostGrams, (batchSize.flourGrams * after) / before) }
      : {
          ...batchSize,
          pieces: Math.min(most.piecesOfBatch, Math.ceil((batchSize.pieces * after) / before)),
        }
  return { ...next, formula: { ...next.formula, batchSize: size } }
}
