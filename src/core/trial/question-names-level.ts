import type { Level } from './level.ts'

/**
 * Whether a trial's question might give a level away: it holds a figure, or the name of an option. Asked wherever the
 * question stands over something covered; a figure that is no level is covered too, since nobody can tell from outside.
 */
export function questionNamesLevel(
  question: string,
  levels: readonly Pick<Level, 'label'>[],
): boolean {
  const words = question.toLowerCase()
  return (
    /\p{Number}/u.test(words) ||
    levels.some(({ label }) => label.trim() !== '' && words.includes(label.trim().toLowerCase()))
  )
}
