import { formulaViews, type PrefermentView } from '@/core/formula/formula-views.ts'
import { formulaAtLevel } from './formula-at-level.ts'
import type { Plan } from './plan-record.ts'
import { referenceLevel } from './reference-level.ts'

export interface StarterTrap {
  levelId: string
  value: number
  prefermentGrams: number
  /** Hydration if only the preferment's mass changed and the final mix kept the reference level's flour and water. */
  hydrationLeftAlonePercent: number
  /** Points by which that is off the wanted hydration: the rider the baker did not mean. */
  offPoints: number
  /** The correction: grams of flour and water the final mix takes less (or, below zero, more) than at the reference. */
  lessFlourGrams: number
  lessWaterGrams: number
}

/**
 * The trap of a preferment-share trial: more starter in the same flour and water pulls the dough towards the starter's
 * own hydration. At each level, how far, and the flour and water to take off the final mix so that flour and hydration
 * stay. The plan's own weights already carry the correction. Empty when the factor is no preferment's share.
 */
export function starterTrap(plan: Pick<Plan, 'formula' | 'factor' | 'levels'>): StarterTrap[] {
  const { acts } = plan.factor
  const reference = referenceLevel(plan.levels)
  if (acts.on !== 'preferment-share' || !reference) return []
  const base = formulaAtLevel(plan, reference)
  if (!base.ok) return []
  const before = formulaViews(base.formula)
  const finalBefore = {
    flour: before.finalDough.flourGrams,
    water: waterOf(before.finalDough.rows),
  }
  return plan.levels.flatMap((level) => {
    const at = formulaAtLevel(plan, level)
    if (!at.ok || level.value === null) return []
    const now = formulaViews(at.formula)
    const named = now.preferments.find(({ prefermentId }) => prefermentId === acts.prefermentId)
    const flour = finalBefore.flour + sumOf(now.preferments, 'flourGrams')
    const water = finalBefore.water + sumOf(now.preferments, 'waterGrams')
    if (!named || !(flour > 0)) return []
    const left = (water / flour) * 100
    const wanted = (waterOf(now.overall) / now.flourGrams) * 100
    return [
      {
        levelId: level.id,
        value: level.value,
        prefermentGrams: named.totalGrams,
        hydrationLeftAlonePercent: left,
        offPoints: left - wanted,
        lessFlourGrams: finalBefore.flour - now.finalDough.flourGrams,
        lessWaterGrams: finalBefore.water - waterOf(now.finalDough.rows),
      },
    ]
  })
}

function waterOf(rows: { kind: string; grams: number }[]): number {
  return rows.reduce((sum, { kind, grams }) => sum + (kind === 'water' ? grams : 0), 0)
}

function sumOf(views: PrefermentView[], field: 'flourGrams' | 'waterGrams'): number {
  return views.reduce((sum, view) => sum + view[field], 0)
}
