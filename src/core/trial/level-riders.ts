import { batchGrams } from '@/core/formula/batch-grams.ts'
import type { Formula } from '@/core/formula/formula-record.ts'
import { hydrationPercent, waterFromEverythingPercent } from '@/core/formula/hydration.ts'
import { flourPercent, kindPercent } from '@/core/formula/totals.ts'
import { formulaAtLevel } from './formula-at-level.ts'
import type { Plan } from './plan-record.ts'

/** What rides along with the factor on the formula's side, at one level. */
export interface LevelRiders {
  levelId: string
  /** The level in the factor's own unit; null for an option of a choice. */
  value: number | null
  doughGrams: number
  flourGrams: number
  /** Mass of a piece and the flour in it; null when the batch is sized by flour. */
  pieceGrams: number | null
  flourPerPieceGrams: number | null
  hydrationPercent: number | null
  waterFromEverythingPercent: number | null
  /** Salt and yeast per 100 g of water, the water inside milk, egg and the like counted; null without water. */
  saltPercentOfWater: number | null
  yeastPercentOfWater: number | null
}

/** The formula's riders of every level that can be made; a level that cannot is left out (`planProblems` says why). */
export function levelRiders(plan: Pick<Plan, 'formula' | 'factor' | 'levels'>): LevelRiders[] {
  return plan.levels.flatMap((level) => {
    const at = formulaAtLevel(plan, level)
    return at.ok ? [{ levelId: level.id, value: level.value, ...ridersOf(at.formula) }] : []
  })
}

function ridersOf(formula: Formula): Omit<LevelRiders, 'levelId' | 'value'> {
  const { doughGrams, flourGrams, pieceGrams } = batchGrams(formula)
  const water = waterFromEverythingPercent(formula) ?? 0
  const flour = flourPercent(formula)
  const ofWater = (kind: 'salt' | 'yeast') =>
    water > 0 && flour > 0 ? ((kindPercent(formula, kind) * 100) / flour / water) * 100 : null
  return {
    doughGrams,
    flourGrams,
    pieceGrams,
    flourPerPieceGrams:
      pieceGrams !== null && doughGrams > 0 ? (pieceGrams * flourGrams) / doughGrams : null,
    hydrationPercent: hydrationPercent(formula),
    waterFromEverythingPercent: waterFromEverythingPercent(formula),
    saltPercentOfWater: ofWater('salt'),
    yeastPercentOfWater: ofWater('yeast'),
  }
}
