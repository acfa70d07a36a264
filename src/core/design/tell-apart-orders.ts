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

/** Deals one order of the test to each of `count` tasters: all orders equally often as far as the number goes. */
export function tellApartOrders(
  chance: Chance,
  test: TellApart['test'],
  count: number,
): TellApartOrder[] {
  const dealt: TellApartOrder[] = []
  while (dealt.length < count) dealt.push(...shuffled(chance, orders[test]))
  return dealt.slice(0, count)
}
