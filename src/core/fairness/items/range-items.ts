import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import { usualRangesOf } from '@/core/formula/usual-ranges.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { thingsOfKind } from '@/core/kitchen/things-of-kind.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { endsOf } from './ends-of.ts'
import { madeItem } from './made-item.ts'

const ranged = ['hydration', 'salt', 'yeast'] as const

/**
 * Levels against the usual ranges over all styles, as hints: how far the outermost lies outside, and whether the levels span so
 * much that neighbours are different breads rather than steps of one. Salt's usual range is what people like, not what dough
 * bears, so its span is not judged.
 */
export function rangeItems(plan: Plan): FairnessItem[] {
  const of = ranged.find((one) => one === plan.factor.acts.on)
  const ends = endsOf(plan.levels.flatMap(({ value }) => (value === null ? [] : [value])))
  if (!of || !ends) return []
  const usual = usualRangesOf(of)
  const low = Math.min(...usual.map(({ leastPercent }) => leastPercent))
  const high = Math.max(...usual.map(({ mostPercent }) => mostPercent))
  const items: FairnessItem[] = []
  const outside = Math.max(low - ends.low, ends.high - high)
  if (outside > 0) {
    const data = { of, low, high }
    items.push(madeItem('outside-usual', { size: outside, data, path: '/levels' }))
  }
  if (of === 'salt') return items
  const data = { of, usualLow: low, usualHigh: high }
  const size = ((ends.high - ends.low) / (high - low)) * 100
  const remedies = [{ code: 'levels-closer' as const }]
  const wide = madeItem('levels-wide', { size, data, remedies, path: '/levels' })
  return wide.severity === 'fine' ? items : [...items, wide]
}

/** Flour of one name from several bags or lots: among the kitchen's bags that the plan uses, and its own flours. */
export function flourItems(plan: Plan, kitchen: readonly KitchenThing[]): FairnessItem[] {
  const bagIds = plan.formula.ingredients.flatMap(({ flourLotId }) => flourLotId ?? [])
  const used = thingsOfKind(kitchen, 'flour', [...plan.kitchenIds, ...bagIds])
  const nameOf = (bag: { name: string }) => bag.name.trim().toLowerCase()
  return [...new Set(used.map(nameOf))].flatMap((name): FairnessItem[] => {
    const bags = used.filter((bag) => nameOf(bag) === name)
    const [first] = bags
    const lots = new Set(bags.map(({ id, lot }) => lot.trim() || id)).size
    if (!first || lots < 2) return []
    return [
      madeItem('flour-lots', {
        ...{ size: lots, data: { name: first.name }, subject: first.id, path: '/kitchenIds' },
        remedies: [{ code: 'blend-bags' }],
      }),
    ]
  })
}
