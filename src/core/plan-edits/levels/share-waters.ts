import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { referenceLevel } from '@/core/trial/reference-level.ts'
import { startingWater } from './own-water.ts'

/** What the levels of a flour's share would drink, each at its own water. */
export interface ShareWaters {
  /** Points of water that the last share wants more than the first: at least and at most, the same where the lots' own figures say. */
  leastPoints: number
  mostPoints: number
  known: boolean
  /** Hydration for each level to start from, % of flour. */
  waters: { levelId: string; percent: number }[]
}

/** Points of water more for each point of wholemeal in place of white flour; bakers' pages disagree by so much. */
const leastPerPoint = 0.05
const mostPerPoint = 0.2

/**
 * The water of each share: that of the formula at the usual level, and for each point of share what the one flour takes more than the
 * other, by the figures of their lots, else the middle of what wholemeal wants. Null for another factor, without two
 * levels, and where no water is to be moved.
 */
export function shareWaters(plan: Plan, kitchen: readonly KitchenThing[]): ShareWaters | null {
  const { acts } = plan.factor
  const values = plan.levels.flatMap(({ value }) => value ?? [])
  const watered = plan.formula.ingredients.some(({ kind }) => kind === 'water')
  if (acts.on !== 'flour-share' || values.length < 2 || !watered) return null
  const apart = Math.max(...values) - Math.min(...values)
  const own = lotsPerPoint(plan, kitchen, acts.ingredientId, acts.fromIngredientId)
  const perPoint = own ?? (leastPerPoint + mostPerPoint) / 2
  const usual = referenceLevel(plan.levels)?.value ?? values[0] ?? 0
  const start = startingWater(plan.formula)
  return {
    leastPoints: apart * (own ?? leastPerPoint),
    mostPoints: apart * (own ?? mostPerPoint),
    known: own !== null,
    waters: plan.levels.flatMap(({ id, value }) =>
      value === null
        ? []
        : [
            {
              levelId: id,
              percent: Math.max(0, Number((start + (value - usual) * perPoint).toFixed(1))),
            },
          ],
    ),
  }
}

function lotsPerPoint(
  { formula }: Pick<Plan, 'formula'>,
  kitchen: readonly KitchenThing[],
  flourId: string,
  fromId: string,
): number | null {
  const takes = [flourId, fromId].map((ingredientId) => {
    const lotId = formula.ingredients.find(({ id }) => id === ingredientId)?.flourLotId
    const lot = kitchen.find(({ id }) => id === lotId)
    return lot?.kind === 'flour' ? lot.absorptionPercent : undefined
  })
  const [flour, from] = takes
  return flour === undefined || from === undefined ? null : (flour - from) / 100
}
