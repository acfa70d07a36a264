import type { LessonSaid } from './lesson.ts'

/** What a learner said, from the texts it is kept as: `guess` (a level's id, or "alike"), `score/A`, `nothing`. */
export function saidOfDraft(
  values: Readonly<Partial<Record<string, string>>>,
  levelIds: readonly string[],
): LessonSaid {
  const { guess = '' } = values
  return {
    guess: guess === 'alike' ? 'alike' : levelIds.includes(guess) ? { levelId: guess } : null,
    scores: new Map(
      Object.entries(values).flatMap(([key, text]) => {
        const letter = /^score\/([A-Z])$/.exec(key)?.[1]
        const score = Number(text)
        return letter && Number.isInteger(score) && score >= 1 && score <= 9
          ? [[letter, score] as const]
          : []
      }),
    ),
    nothingToTaste: values.nothing === 'yes',
  }
}
