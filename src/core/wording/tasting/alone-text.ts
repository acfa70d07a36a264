import type { BlindGuess } from '@/core/seal/blind/blind-view.ts'
import type { PlateRound } from '@/core/tasting/plates.ts'
import { countWord, listText } from '@/core/wording/words/list-text.ts'
import { midSentence } from '@/core/wording/words/mid-sentence.ts'

/** How whoever tastes alone loses track of the plates of one round, in four steps. */
export function loseTrackSteps({
  plates,
  letters,
  setId,
}: Pick<PlateRound, 'plates' | 'letters' | 'setId'>): string[] {
  const count = countWord(plates.length)
  const twice = letters.filter((letter, at) => letters.indexOf(letter) !== at)
  const once = letters.filter((letter) => !twice.includes(letter))
  const cut =
    setId === null || twice.length === 0
      ? `Cut ${count} pieces alike, one on each of ${count} equal plates.`
      : `Cut ${count} pieces alike, two of ${listText(twice)} and one of ${listText(once)}, one on each of ${count} equal plates.`
  return [
    cut,
    'Stick the letter of its tub under each plate, face down.',
    'Shut your eyes and move the plates about, or ask somebody to.',
    `Lay the numbers 1 to ${plates.length} before them, left to right.`,
  ]
}

/** What holds where pieces can be told by their look. */
export const plateLooks =
  'Nobody knows now which is which, not even this notebook. Pieces that look different? Taste them in dim light, or cut the crust off.'

/** Before a tasting of one person: what it can show, and what it cannot. */
export const oneCanShow =
  'One person can show how well they repeat themselves, whether they can tell two doughs apart over several evenings, and what they like best so far. One person cannot show what others like; and one evening of one dough a level says nothing yet of what was changed, since any two doughs differ a little.'

/** After it, by how many evenings there were. */
export function oneHasShown(sessions: number): string {
  return sessions > 1
    ? `One person tasted, on ${countWord(sessions)} evenings: what is said holds for this person alone, and for these doughs. What others like it does not say.`
    : 'One person tasted on one evening: it is a first order of liking and a measure of how they repeat themselves. It says nothing of what others like, and nothing yet of what was changed; the same again on another evening would.'
}

/** The question at the end, as a heading and as what is asked. */
export function guessWords(guess: BlindGuess): { title: string; asks: string } {
  if (!guess.most)
    return {
      title: 'Which was the usual one?',
      asks: 'One of the samples may be what this kitchen always bakes. A guess is as welcome as no idea.',
    }
  const { factorKind, factorName } = guess.most
  const which =
    factorKind === 'hydration'
      ? 'Which was the wettest dough?'
      : factorKind === 'salt'
        ? 'Which had the most salt?'
        : `Which had the most of what was changed: ${midSentence(factorName)}?`
  return {
    title: 'Before you look: a guess',
    asks: `${which} Your hands may know. It is kept with the answer.`,
  }
}
