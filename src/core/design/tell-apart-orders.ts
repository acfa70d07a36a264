import type { TellApart } from '@/core/trial/plan-record.ts'
import { type Chance, shuffled } from './chance.ts'

/** Which of the two levels (0 or 1) stands at each place, and which place is the right answer. */
export interface TellApartOrder {
  samples: number[]
  answer: number
}

/**
 * All orders of each test. Triangle: two of one level and one of the other, the odd one is right. Duo-trio: the first is the
 * named reference, the right one matches it. Paired: one of each, the second level is right (for a measured factor the
 * higher one). Textbook designs of difference testing, from memory.
 */
const orders: Record<TellApart['test'], TellApartOrder[]> = {
  triangle: [0, 1].flatMap((odd) =>
    [0, 1, 2].map((answer) => ({
      samples: [0, 1, 2].map((place) => (place === answer ? odd : 1 - odd)),
      answer,
    })),
  ),
  'duo-trio': [0, 1].flatMap((reference) => [
    { samples: [reference, reference, 1 - reference], answer: 1 },
    { samples: [reference, 1 - reference, reference], answer: 2 },
  ]),
  paired: [
    { samples: [0, 1], answer: 1 },
    { samples: [1, 0], answer: 0 },
  ],
}

/**
 * Deals one order of the test to each of `count` tasters: over them and what was dealt before (`used`, the orders of earlier
 * sessions) each order equally often or once more, chance deciding among those that came least. One that is none of the test's
 * counts for nothing.
 */
export function tellApartOrders(
  chance: Chance,
  test: TellApart['test'],
  count: number,
  used: readonly TellApartOrder[] = [],
): TellApartOrder[] {
  const all = orders[test]
  const key = ({ samples, answer }: TellApartOrder) => `${samples.join()} ${answer}`
  const times = new Map(all.map((order) => [key(order), 0]))
  const use = (order: TellApartOrder) => {
    const before = times.get(key(order))
    if (before !== undefined) times.set(key(order), before + 1)
  }
  used.forEach(use)
  const dealt: TellApartOrder[] = []
  while (dealt.length < count) {
    const least = Math.min(...times.values())
    const open = all.filter((order) => times.get(key(order)) === least)
    const next = shuffled(chance, open).slice(0, count - dealt.length)
    next.forEach(use)
    dealt.push(...next)
  }
  return dealt
}
