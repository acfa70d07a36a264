import type { Formula } from '@/core/formula/formula-record.ts'
import { formulaAtLevel } from '@/core/trial/formula-at-level.ts'
import type { Level } from '@/core/trial/level.ts'
import type { MovedFormula } from '@/core/trial/moved-formula.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { stepAtLevel } from '@/core/trial/step-at-level.ts'
import { yieldOfFormula } from './formula-at-yield.ts'
import type { HouseRevision, HouseTemperature, RestsOn, Yield } from './house-record.ts'

export type Adopted =
  | { ok: true; revision: HouseRevision }
  | { ok: false; trouble: Extract<MovedFormula, { ok: false }> }

/**
 * A level of a trial as the first revision of a house formula: its formula, the method as that level is worked, the
 * temperatures, and what it rests on. Bags of flour are left out: they are used up. `made` is the yield; else that of one batch.
 */
export function adoptLevel(
  plan: Plan,
  level: Level,
  restsOn: RestsOn,
  { at, zone, made, note = '' }: { at: number; zone: string; made?: Yield; note?: string },
): Adopted {
  const found = formulaAtLevel(plan, level)
  if (!found.ok) return { ok: false, trouble: found }
  const formula = withoutBags(found.formula)
  const revision: HouseRevision = {
    ...{ at, zone, formula, note },
    steps: plan.steps.flatMap((step) => stepAtLevel(plan.factor, step, level) ?? []),
    temperature: temperatureOf(plan),
    yield: made ?? yieldOfFormula(formula),
    restsOn: [restsOn],
  }
  return { ok: true, revision }
}

function withoutBags(formula: Formula): Formula {
  const ingredients = formula.ingredients.map(({ flourLotId: _, ...ingredient }) => ingredient)
  return { ...formula, ingredients }
}

function temperatureOf({ temperature }: Plan): HouseTemperature | null {
  if (!temperature) return null
  const { matched: _, ...kept } = temperature
  return kept
}
