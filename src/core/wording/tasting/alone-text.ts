import type { BlindGuess } from '@/core/seal/blind/blind-view.ts'
import type { PlateRound } from '@/core/tasting/plates.ts'
import type { LostSession } from '@/core/whole-trial/told-trial.ts'
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

/** What cannot be known of a session whose tickets or letters are lost, for findings and report. */
export function lostSessionText({
  number,
  what,
  because,
}: Pick<LostSession, 'number' | 'what' | 'because'>): string {
  return what === 'tickets'
    ? `Session ${number} was ended without anybody knowing which dough was which level (“${because}”). What was scored and measured then stays in the record and stands in no finding: of its levels nothing can be said.`
    : `Session ${number} was ended without anybody knowing which dough lay on which plate (“${because}”). Its scores stay in the record and stand in no finding; what was measured at the bench does.`
}

/** Before a session is ended so. */
export function lostForGood(what: LostSession['what']): string {
  const gone =
    what === 'tickets'
      ? 'Nobody will know any more which dough of this session was which level: the session stands in no finding'
      : 'Nobody will know any more which dough lay on which plate: the scores of this session stand in no finding'
  return `${gone}, for good, and the report says so with your reason. Where only one is missing, say the others: the last fills itself in.`
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
