import { most } from '@/core/record/most.ts'
import { piecesAskedOfBatch } from '@/core/trial/pieces-in-batch.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

type Made = Partial<Pick<Plan, 'flights' | 'sparePieces' | 'warmUpPiece'>>

/**
 * The plan with more or fewer pieces made. A batch sized by its pieces keeps up: it never gives fewer than are asked, and
 * where it gave just as many as were asked it follows both ways. A batch sized by its flour stays as it was typed.
 */
export function withPieces(plan: Plan, made: Made): Plan {
  return enoughPieces(plan, { ...plan, ...made })
}

/** The next plan with a batch that gives the pieces it must, where the plan's is sized by them. */
export function enoughPieces(plan: Plan, next: Plan): Plan {
  const { batchSize } = next.formula
  if (batchSize.by === 'flour') return next
  const asked = Math.min(most.piecesOfBatch, piecesAskedOfBatch(next))
  const gaveJust = batchSize.pieces === piecesAskedOfBatch(plan)
  if (asked === 0 || batchSize.pieces === asked || (batchSize.pieces > asked && !gaveJust))
    return next
  return { ...next, formula: { ...next.formula, batchSize: { ...batchSize, pieces: asked } } }
}
