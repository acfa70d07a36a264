import type { Spread } from '@/core/design/spread.ts'
import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { type Effect, effectOf } from './effect-of.ts'

/** An item of the fairness check with what it may do to the answer. */
export interface WeighedItem {
  item: FairnessItem
  effect: Effect
}

/**
 * The items that are not fine, the largest by their effect on the answer first: what takes the verdict away, then by points; what the baker
 * accepted comes last. Items of one effect keep their turn.
 */
export function largestByEffect(
  items: readonly FairnessItem[],
  plan: Plan,
  spread?: Spread,
): WeighedItem[] {
  return items
    .filter(({ severity }) => severity !== 'fine')
    .map((item) => ({ item, effect: effectOf(item, plan, spread) }))
    .toSorted(
      (a, b) =>
        Number(a.item.accepted) - Number(b.item.accepted) || weight(b.effect) - weight(a.effect),
    )
}

const weight = (effect: Effect) => (effect.is === 'no-verdict' ? Number.MAX_VALUE : effect.points)
