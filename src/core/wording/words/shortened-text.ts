/** A sentence cut between words to at most so many letters, with an ellipsis; within a word only where the first alone is longer. */
export function shortenedText(text: string, mostLetters: number): string {
  const letters = [...text.replace(/\s+/g, ' ').trim()]
  if (letters.length <= mostLetters) return letters.join('')
  const room = letters.slice(0, mostLetters).join('')
  const between = room.lastIndexOf(' ')
  const kept = between > 0 ? room.slice(0, between) : room.slice(0, -1)
  return `${kept.replace(/[,;:]$/, '')}…`
}
