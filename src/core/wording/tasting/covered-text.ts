import { countWord } from '@/core/wording/words/list-text.ts'

/** What stands in place of a covered page: why, when it opens, and what of it is open meanwhile. */
export interface CoveredText {
  shown: string
  known: string
  lines: { title: string; text: string }[]
}

const opens = 'It opens with the last ballot, for good.'
const early = { title: 'Closing early', text: 'needs a reason, which is kept and reported' }

/**
 * Why a place is covered while so many people taste. `place` is its name in the address, `title` as it is headed; Tasting is never
 * covered.
 */
export function coveredText(place: string, title: string, tasters: number): CoveredText {
  const people = tasters === 1 ? 'somebody tastes' : `${countWord(tasters)} people taste`
  switch (place) {
    case 'plan':
      return {
        shown: `The plan is covered while ${people}.`,
        known: `It names the levels and their letters. ${opens}`,
        lines: [
          { title: 'Open', text: 'the tasting, the bench by its letters, the kitchen' },
          { title: 'Covered', text: 'levels, weigh sheet, fairness, key' },
        ],
      }
    case 'bench':
      return {
        shown: `The bench is covered while ${people}.`,
        known: `It names levels and weights beside their letters. ${opens}`,
        lines: [
          { title: 'Open', text: 'the work itself, by letters alone' },
          { title: 'Covered', text: 'what each letter is, and what was weighed' },
        ],
      }
    case 'findings':
      return {
        shown: 'Nothing to see yet, on purpose.',
        known: `The first answer shown would colour the next. ${opens}`,
        lines: [
          { title: 'Then', text: 'the answer, its picture, the easiest level, what comes next' },
          early,
        ],
      }
    default:
      return {
        shown: `${title} is covered while ${people}.`,
        known: `It says which code is which. ${opens}`,
        lines: [{ title: 'Then', text: 'two pages for the wall, and all that stands behind them' }],
      }
  }
}

/** Cups were shuffled and nobody tastes yet: there is nothing that could be shown. */
export const coveredByCups: Pick<CoveredText, 'shown' | 'known'> = {
  shown: 'Which dough is which waits under the cups.',
  known:
    'Not even this notebook knows. This page speaks of levels, so it stays covered until the tickets are turned.',
}

/** Where a taster stands at a sealed table, in a word or two: never a score. */
export function seatText({
  presence,
  answered,
  expected,
}: {
  presence: 'awaited' | 'present' | 'declined' | 'left'
  answered: number
  expected: number
}): string {
  if (presence === 'declined') return 'does not taste'
  if (presence === 'left') return `${answered} sealed, has left`
  return answered === 0 ? 'waits' : `${answered} of ${expected}`
}
