import type { Ranked, RankingTrouble } from '@/core/seal/blind/ranked-codes.ts'
import type { RankingAsked } from '@/core/trial/at-table.ts'
import { listText } from '@/core/wording/words/list-text.ts'

/** What is asked where the baker has no words of their own. */
export const usualRankingQuestion = 'Put them in order, the one you like best first.'

/** What a ranking asks of a taster, in the baker's own words where they have some. */
export function rankingQuestion({ asks }: Pick<RankingAsked, 'asks'>): string {
  return asks ?? usualRankingQuestion
}

/** How it is pressed, and whether samples may share a place. */
export function rankingHow({ ties }: Pick<RankingAsked, 'ties'>): string {
  return ties
    ? 'Press them in your order; a second press takes one out again. Where you cannot choose, two may share a place.'
    : 'Press them in your order; a second press takes one out again. Each has a place of its own, also where you have to guess.'
}

/** What is said on paper beside the blanks. */
export function rankingOnPaper({ ties }: Pick<RankingAsked, 'ties'>): string {
  return ties
    ? 'Write the codes from first to last; those that share a place with = between them.'
    : 'Write the codes from first to last, each in a place of its own.'
}

/** What is wrong with an order, and how it is mended; `named` says what a code goes by. */
export function rankingTroubleText(
  { reason, codes }: RankingTrouble,
  named: (code: string) => string = (code) => code,
): string {
  const which = listText([...new Set(codes)].map(named))
  switch (reason) {
    case 'missing':
      return `The order still lacks ${which}.`
    case 'unknown':
      return `The order names ${which}, which is none of the samples.`
    case 'twice':
      return `The order names ${which} twice; each stands in it once.`
    case 'shared':
      return `${which} share a place, and this order has none to share: put one before the other.`
  }
}

/** An order first to last: “521, 877 = 402”; `named` says what a code goes by. */
export function rankedWords(
  ranked: Ranked,
  named: (code: string) => string = (code) => code,
): string {
  return ranked.map((place) => place.map(named).join(' = ')).join(', ')
}

/** “1st”, “2nd”, “3rd”, “4th”: the number of a place. */
export function placeText(place: number): string {
  const ten = place % 100
  const ending = ten >= 11 && ten <= 13 ? 'th' : (['th', 'st', 'nd', 'rd'][place % 10] ?? 'th')
  return `${place}${ending}`
}
