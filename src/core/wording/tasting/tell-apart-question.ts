import type { TellApart } from '@/core/trial/plan-record.ts'

/**
 * What a tell-apart set asks of a taster, in the baker's own words where they have some; of a pair, which has more of what the plan
 * compares them in.
 */
export function tellApartQuestion({
  test,
  attribute,
  asks,
}: Pick<TellApart, 'test' | 'attribute' | 'asks'>): string {
  if (asks !== undefined) return asks
  switch (test) {
    case 'triangle':
      return 'Two of these are alike. Which one is different?'
    case 'duo-trio':
      return 'Which of the last two is like the first?'
    case 'paired':
      return `Which of the two has more ${attribute ?? 'of it'}? Pick one, also if you have to guess.`
  }
}
