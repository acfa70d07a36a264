import { chanceFrom, shuffled } from '@/core/design/chance.ts'
import { responsePresets } from '@/core/plan-edits/responses/response-presets.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { AnswerScale } from '@/core/trial/response.ts'

/** The parts of a lesson, in the order in which they are opened; the answer and what is behind it come last. */
export const lessonParts = [
  'question',
  'guess',
  'doughs',
  'oven',
  'tasting',
  'answer',
  'riders',
  'reach',
] as const
export type LessonPart = (typeof lessonParts)[number]

/** What a learner has said so far. */
export interface LessonSaid {
  /** The level they expect to come out best, or that no difference will show; null while they have not said. */
  guess: { levelId: string } | 'alike' | null
  /** By the letter of a plate: the score they gave it. */
  scores: ReadonlyMap<string, number>
  /** There is nothing to taste where they are: the answer is read, not tasted. */
  nothingToTaste: boolean
}

/** A plate of the lesson: a letter that is dealt for it alone, and the level that lies under it. */
export interface LessonPlate {
  letter: string
  levelId: string
}

/** Letters on plates, dealt anew for each lesson from its own seed, so that none tells what a session's letters told. */
export function lessonPlates({ levels }: Pick<Plan, 'levels'>, seed: number): LessonPlate[] {
  return shuffled(
    chanceFrom(seed),
    levels.map(({ id }) => id),
  ).map((levelId, at) => ({ letter: String.fromCharCode(65 + at), levelId }))
}

/** What still covers the answer; null once the learner has guessed and tasted, or said that there is nothing to taste. */
export function coveredBy(
  said: LessonSaid,
  plates: readonly LessonPlate[],
): 'guess' | 'tasting' | null {
  if (said.guess === null) return 'guess'
  if (said.nothingToTaste) return null
  return plates.every(({ letter }) => said.scores.has(letter)) ? null : 'tasting'
}

/** The parts that may be opened now: all before the answer, and the rest once nothing covers it. */
export function openParts(said: LessonSaid, plates: readonly LessonPlate[]): LessonPart[] {
  const covered = coveredBy(said, plates)
  if (covered === null) return [...lessonParts]
  const first = covered === 'guess' ? 'doughs' : 'answer'
  return lessonParts.slice(0, lessonParts.indexOf(first))
}

/** What a learner scores: the main response, else the first that tasters score on nine points; liking where there is none. */
export function lessonScale(plan: Pick<Plan, 'responses' | 'mainResponseId'>): {
  name: string
  scale: Extract<AnswerScale, { kind: 'nine-point' }>
} {
  const main = plan.responses.filter(({ id }) => id === plan.mainResponseId)
  for (const { name, scale, by } of [...main, ...plan.responses, ...responsePresets])
    if (by === 'taster' && scale.kind === 'nine-point') return { name, scale }
  throw new Error('liking is scored on nine points')
}

/** The plates from the highest score to the lowest, with the level each held; those of one score in the order of their letters. */
export function tastedInOrder(
  said: Pick<LessonSaid, 'scores'>,
  plates: readonly LessonPlate[],
): (LessonPlate & { score: number })[] {
  return plates
    .flatMap((plate) => {
      const score = said.scores.get(plate.letter)
      return score === undefined ? [] : [{ ...plate, score }]
    })
    .toSorted((one, other) => other.score - one.score || one.letter.localeCompare(other.letter))
}
