import type { LessonPart, LessonPlate, LessonSaid } from '@/core/lesson/lesson.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Step } from '@/core/trial/step.ts'
import { listText } from '@/core/wording/words/list-text.ts'
import { levelNamed } from '@/core/wording/words/named-in-plan.ts'

/** What each part of a lesson is called. */
export const lessonTitles: Readonly<Record<LessonPart, string>> = {
  question: 'What is asked',
  guess: 'Your guess',
  doughs: 'At the doughs',
  oven: 'At the oven',
  tasting: 'Taste',
  answer: 'What was found',
  riders: 'What else changed',
  reach: 'How far it carries',
}

/** What to look for in a part, one thing a line. */
export function lookFor(part: LessonPart, plan: Plan): string[] {
  const { factor, levels, doughs } = plan
  switch (part) {
    case 'question':
      return [
        `One thing changes: ${factor.name}. Name three things that are to stay the same.`,
        `Is one of the ${levels.length} levels what you would have done without asking?`,
        doughs === 'one'
          ? 'One dough was divided: what can no longer differ between its pieces?'
          : 'Each level is a dough of its own: what could differ between two doughs besides the level?',
      ]
    case 'guess':
      return [
        'Say which level you expect to come out best, and why: a guess that is not written down is always right afterwards.',
        'How far apart would two of them have to be for you to bother?',
      ]
    case 'doughs':
      return [
        'Which ingredient changes, and which weights change with it?',
        'Put a wet finger on each dough, if you made them: can you tell them apart with your eyes shut?',
        ...plan.steps.flatMap((step) => stepLooks[step.kind] ?? []),
      ]
    case 'oven':
      return [
        ...plan.steps.flatMap((step) => ovenLooks[step.kind] ?? []),
        'In which order did they go in? What would you blame if the first one came out pale?',
      ]
    case 'tasting':
      return [
        'Taste in the order of the letters, water between, and score each before the next.',
        'Do not look for the level: say how much you like it.',
        'Then name, for yourself, the two that you could swap without noticing.',
      ]
    case 'answer':
      return [
        'Read the sentence to its end: how much of it is shown, and how much is only likely?',
        'Where does your own plate disagree? One plate of one person is one number; how many numbers stand behind the sentence?',
      ]
    case 'riders':
      return [
        'What changed along with the level although nobody meant it to?',
        'Would it have helped the level that came out best, or held it back?',
      ]
    case 'reach':
      return [
        'What would somebody in another kitchen have to make again before they may say the same?',
        'Which single thing would you change in this trial?',
      ]
  }
}

type Looks = Partial<Record<Step['kind'], string>>

/** What to look for at a step: common practice of the trade, no source. */
const stepLooks: Looks = {
  autolyse: 'Before and after the rest: how far does a piece stretch before it tears?',
  mix: 'When does each dough let go of the bowl? Note the minute, not the feeling.',
  fold: 'Count how often each dough can be folded before it resists.',
  proof: 'Mark each tub at the start. Which one has risen most at the same minute?',
  'cold-proof': 'What goes on in the cold, and what nearly stands still?',
  ball: 'Which piece keeps its shape on the bench, and which one spreads?',
}
const ovenLooks: Looks = {
  open: 'How far does each open before it tears or shrinks back?',
  slash: 'Does the blade drag in any of them?',
  bake: 'Watch the first two minutes: which one rises most, and which one browns first?',
  cool: 'Listen, then wait. What would a warm slice do to the score?',
  cut: 'Lay the cut faces side by side before anybody tastes: size of the holes, and how even they are.',
}

/** Why a part is not open yet, and what opens it. */
export function coveredText(by: 'guess' | 'tasting'): string {
  return by === 'guess'
    ? 'Covered until you have guessed.'
    : 'Covered until every plate has your score, or you say that there is nothing to taste.'
}

/** What the learner guessed, as it is said beside the answer. */
export function guessText(guess: LessonSaid['guess'], plan: Plan): string {
  if (guess === null) return 'You made no guess.'
  return guess === 'alike'
    ? 'You guessed that no difference would show.'
    : `You guessed that ${levelNamed(plan, guess.levelId)} would come out best.`
}

/** What the learner's own plate said, from the highest score down; those of one score stand together. */
export function ownPlateText(
  plates: readonly (LessonPlate & { score: number })[],
  plan: Plan,
): string {
  if (plates.length === 0) return 'You had nothing to taste, so the answer is read, not tasted.'
  const scores = [...new Set(plates.map(({ score }) => score))]
  const said = scores.map((score) => {
    const same = plates.filter((plate) => plate.score === score)
    return `${listText(same.map(({ letter, levelId }) => `${letter}, which was ${levelNamed(plan, levelId)}`))}: ${score}`
  })
  return `On your plate, from the best down: ${said.join('; ')}. One plate of one person: it can surprise you, it cannot settle anything.`
}

/** What the lesson is, where it is begun. */
export const lessonOffer =
  'A step at a time, with what to look for; the answer stays covered until the learner has guessed and tasted.'

/** Before anybody tastes in a lesson. */
export const lessonCaution =
  'Bake the levels again before you taste: raw flour and raw dough are never tasted. Ask every learner about allergies first.'
