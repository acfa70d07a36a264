/** What stands in place of an answer that a lesson covers; apart from the lesson's own words, since the home list says it too. */
export const lessonCovers = {
  title: 'A lesson is under way',
  text: 'The answer is covered until the learner has guessed and tasted. It opens in the lesson.',
  /** In the place of one sentence. */
  line: 'Covered: a lesson is under way.',
}
