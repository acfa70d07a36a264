import type { FairnessItem, LevelAmount } from '@/core/fairness/fairness-item.ts'
import { hasOwnWater } from '@/core/plan-edits/levels/own-water.ts'
import type { LevelRiders } from '@/core/trial/level-riders.ts'
import { levelRiders } from '@/core/trial/level-riders.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { apartPercent, endsOf } from './ends-of.ts'
import { madeItem } from './made-item.ts'

/**
 * Salt and yeast as a share of the water, in percent of their middle, where the factor is not that ingredient; and the water
 * itself, where the factor is not the hydration: milk, honey or another flour's own water bring it along.
 */
export function strengthItems(plan: Plan): FairnessItem[] {
  const { acts } = plan.factor
  const riders = levelRiders(plan)
  const kindMoved =
    'ingredientId' in acts
      ? plan.formula.ingredients.find(({ id }) => id === acts.ingredientId)?.kind
      : undefined
  const items: FairnessItem[] = []
  const path = '/formula/ingredients'
  const salt = spread(riders, (one) => one.saltPercentOfWater)
  if (salt && kindMoved !== 'salt') {
    const { low, high, perLevel } = salt
    const size = apartPercent(salt)
    items.push(madeItem('salt-in-water', { size, data: { low, high }, perLevel, path }))
  }
  const yeast = spread(riders, (one) => one.yeastPercentOfWater)
  if (yeast && kindMoved !== 'yeast') {
    const { low, high, perLevel } = yeast
    const size = apartPercent(yeast)
    items.push(madeItem('yeast-in-water', { size, data: { low, high }, perLevel, path }))
  }
  const water = spread(riders, (one) => one.waterFromEverythingPercent)
  const asked = acts.on === 'flour-share' && hasOwnWater(plan)
  if (water && !asked && acts.on !== 'hydration' && kindMoved !== 'water' && acts.on !== 'choice') {
    const { low, high, perLevel } = water
    items.push(madeItem('water-rides', { size: high - low, data: { low, high }, perLevel, path }))
  }
  return items
}

function spread(riders: readonly LevelRiders[], of: (one: LevelRiders) => number | null) {
  const perLevel = riders.flatMap((one): LevelAmount[] => {
    const value = of(one)
    return value === null ? [] : [{ levelId: one.levelId, value }]
  })
  const ends = endsOf(perLevel.map(({ value }) => value))
  return ends && ends.high - ends.low > 1e-9 ? { ...ends, perLevel } : null
}

/** A choice of flours asks: the same formula for all, or each at its own water? Either answer is to be known. */
export function choiceItems({ factor, levels }: Plan): FairnessItem[] {
  if (factor.acts.on !== 'choice') return []
  const changes = levels.flatMap((level) => level.changes ?? [])
  if (!changes.some(({ what }) => what === 'ingredient' || what === 'hydration')) return []
  const own = changes.some(({ what }) => what === 'hydration')
  const remedies = own ? [] : [{ code: 'say-own-water' as const }]
  const data = { own }
  return [madeItem('choice-water', { size: 1, counts: false, data, remedies, path: '/levels' })]
}
