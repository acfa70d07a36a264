import type { Factor } from './factor.ts'
import { piecesAskedOfBatch } from './pieces-in-batch.ts'
import type { Plan } from './plan-record.ts'

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
  const next: Plan = { ...plan, factor: { ...plan.factor, splitsAt }, doughs }
  const [before, after] = [piecesAskedOfBatch(plan), piecesAskedOfBatch(next)]
  const { batchSize } = plan.formula
  if (before === after || before === 0 || after === 0) return next
  const size =
    batchSize.by === 'flour'
      ? { ...batchSize, flourGrams: (batchSize.flourGrams * after) / before }
      : { ...batchSize, pieces: Math.ceil((batchSize.pieces * after) / before) }
  return { ...next, formula: { ...plan.formula, batchSize: size } }
}
