import type { Formula } from '@/core/formula/formula-record.ts'
import { formulaAtLevel } from './formula-at-level.ts'
import type { Level } from './level.ts'
import type { MovedFormula } from './moved-formula.ts'
import type { Plan } from './plan-record.ts'

/** A dough to mix in one session: of one level, or (level null) one dough for all. */
export type PlannedBatch =
  | { ok: true; level: Level | null; formula: Formula }
  | { ok: false; level: Level; trouble: Extract<MovedFormula, { ok: false }> }

/**
 * The doughs of one session with their formulas: one for every level, or a single one when the factor acts late and one
 * dough serves all. A single dough divided to several piece masses is sized by their mean.
 */
export function plannedBatches(
  plan: Pick<Plan, 'formula' | 'factor' | 'levels' | 'doughs'>,
): PlannedBatch[] {
  if (plan.doughs === 'one' && plan.factor.splitsAt !== 'mix') {
    return [{ ok: true, level: null, formula: oneDough(plan) }]
  }
  return plan.levels.map((level) => {
    const at = formulaAtLevel(plan, level)
    return at.ok ? { ok: true, level, formula: at.formula } : { ok: false, level, trouble: at }
  })
}

function oneDough({
  formula,
  factor,
  levels,
}: Pick<Plan, 'formula' | 'factor' | 'levels'>): Formula {
  const masses = levels.flatMap(({ value }) => (value === null ? [] : [value]))
  const size = formula.batchSize
  if (factor.acts.on !== 'piece-mass' || size.by === 'flour' || masses.length === 0) return formula
  const pieceGrams = masses.reduce((sum, mass) => sum + mass, 0) / masses.length
  return { ...formula, batchSize: { ...size, pieceGrams } }
}
