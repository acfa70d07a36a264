import type { FairnessItem, LevelAmount } from '@/core/fairness/fairness-item.ts'
import { type LevelRiders, levelRiders } from '@/core/trial/level-riders.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { apartPercent, endsOf } from './ends-of.ts'
import { madeItem } from './made-item.ts'

/** From here on two masses are taken to differ: a tenth of a percent. */
const leastPercent = 0.1

/**
 * Flour or dough: with flour held the pieces differ in mass, with dough or piece held they differ in flour. Each says what
 * the other choice would have done. A factor that is the piece mass itself has no such rider.
 */
export function massItems(plan: Plan): FairnessItem[] {
  if (plan.factor.acts.on === 'piece-mass') return []
  const riders = levelRiders(plan)
  const pieces = riders.every(({ pieceGrams }) => pieceGrams !== null)
  const now = apart(riders, pieces)
  const other = apart(
    levelRiders({ ...plan, factor: { ...plan.factor, held: now.mass ? 'dough' : 'flour' } }),
    pieces,
  )
  const path = '/factor/held'
  const items: FairnessItem[] = []
  const of = pieces ? ('piece' as const) : ('dough' as const)
  if (now.mass) {
    const { size, perLevel, low, high } = now.mass
    const data = { of, low, high, flourPercentOtherwise: other.flour?.size ?? 0 }
    const remedies = [{ code: 'hold' as const, held: of }]
    items.push(madeItem('piece-mass', { size, data, perLevel, remedies, path }))
  }
  if (now.flour && !now.mass) {
    const { size, perLevel, low, high } = now.flour
    const data = { of, low, high, massPercentOtherwise: other.mass?.size ?? 0 }
    const remedies = [{ code: 'hold' as const, held: 'flour' as const }]
    items.push(madeItem('flour-per-piece', { size, data, perLevel, remedies, path }))
  }
  return items
}

interface Apart {
  size: number
  low: number
  high: number
  perLevel: LevelAmount[]
}

/** How far mass and flour differ over the levels: of one piece, or of the whole dough when it is sized by flour. */
function apart(riders: readonly LevelRiders[], pieces: boolean) {
  const by = (grams: (one: LevelRiders) => number | null): Apart | null => {
    const perLevel = riders.map((one) => ({ levelId: one.levelId, value: grams(one) ?? 0 }))
    const ends = endsOf(perLevel.map(({ value }) => value))
    const size = ends ? apartPercent(ends) : 0
    return ends && size >= leastPercent ? { size, ...ends, perLevel } : null
  }
  return {
    mass: by((one) => (pieces ? one.pieceGrams : one.doughGrams)),
    flour: by((one) => (pieces ? one.flourPerPieceGrams : one.flourGrams)),
  }
}
