import { batchGrams } from '@/core/formula/batch-grams.ts'
import type { Formula } from '@/core/formula/formula-record.ts'
import { resizeToDough } from '@/core/formula/resize-formula.ts'
import type { Held } from './factor.ts'
import type { Level } from './level.ts'
import { type MovedFormula, movedFormula } from './moved-formula.ts'
import type { Plan } from './plan-record.ts'
import { referenceLevel } from './reference-level.ts'

/**
 * The whole formula of one level, batch size included. The plan's batch size is that of the reference level (the control,
 * else the middle one); the other levels are sized against it by what is held:
 * - flour: the same flour in every batch; pieces keep their number and change their mass with the dough;
 * - dough: the same dough in every batch; pieces keep number and mass, and hold less flour as the rest rises;
 * - piece: the same piece mass. Sized by pieces this is the same as dough held; sized by flour, the flour stays and what
 *   the dough gains is left over at the divide.
 * Piece mass as the factor sets the mass itself. A reference level that cannot be made is replaced by the plan's formula.
 */
export function formulaAtLevel(
  plan: Pick<Plan, 'formula' | 'factor' | 'levels'>,
  level: Level,
): MovedFormula {
  const { formula, factor } = plan
  const moved = movedFormula(formula, factor.acts, level)
  if (!moved.ok) return moved
  if (factor.acts.on === 'piece-mass') {
    return { ok: true, formula: withPieceGrams(formula, level.value ?? 0) }
  }
  const reference = referenceLevel(plan.levels)
  const base = reference ? movedFormula(formula, factor.acts, reference) : moved
  const against = base.ok ? base.formula : formula
  return { ok: true, formula: sizedAgainst(moved.formula, against, factor.held) }
}

function withPieceGrams(formula: Formula, pieceGrams: number): Formula {
  if (formula.batchSize.by === 'flour') return formula
  return { ...formula, batchSize: { ...formula.batchSize, pieceGrams } }
}

function sizedAgainst(formula: Formula, reference: Formula, held: Held): Formula {
  const now = batchGrams(formula)
  const wanted = batchGrams(reference)
  if (held === 'flour' && now.flourGrams > 0 && now.flourGrams !== wanted.flourGrams) {
    return resizeToDough(formula, (now.doughGrams * wanted.flourGrams) / now.flourGrams)
  }
  if (held === 'dough' && now.doughGrams !== wanted.doughGrams) {
    return resizeToDough(formula, wanted.doughGrams)
  }
  return formula
}
