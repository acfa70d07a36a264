import { weightText } from '@/core/units/mass-text.ts'
import type { Cup } from '@/core/weighing/cup-sheet.ts'

/** What is done with lidded cups once their sheet lies there, step by step. */
export function cupsSteps(letters: readonly string[]): string[] {
  const [first = 'A'] = letters
  return [
    'Fill, lid, ticket. Cut the small tickets below; one goes under each cup.',
    'Fold this sheet on the line, seal it, and write the time over the edge.',
    'Shut your eyes, or let somebody: move the cups about, in a box, under a cloth.',
    `Only now lay the letters ${first} to ${letters.at(-1) ?? first} on the lids, as they stand.`,
    'The ticket goes with its dough: under the cup, the tub, the pan.',
    'After the last ballot: turn the tickets and say in the notebook which went with which letter.',
  ]
}

/** How far the cups are apart, which a hand can feel, and that each ticket is said once. */
export function cupsApartText(cups: readonly Cup[]): string {
  const grams = cups.map((cup) => cup.grams)
  const apart = weightText(Math.max(...grams) - Math.min(...grams))
  return `Each number once; the notebook refuses two doughs with one ticket. The cups differ by ${apart}, which a hand may feel: move them by the box, not one by one.`
}

/** Over the weigh sheet whose grams are the same for all. */
export const sameForAllText =
  'Every dough gets the same, but for one lidded cup. Pour a cup out whole; do not weigh it, nor the dough. Tick when in; write what the scale showed if it differs.'

/** Why the tasting has to be blind all the same. */
export const handsGuessText =
  'A wet dough feels wet. What keeps the tasting blind is the plates: a letter under each, shuffled once more after the cut.'
