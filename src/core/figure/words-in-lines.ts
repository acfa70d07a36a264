/**
 * A name in lines of at most so many glyphs, broken between words; a word that is longer than a line is broken within. Never
 * shortened: the words of all lines together are those of the name. At least one glyph stands in a line.
 */
export function wordsInLines(name: string, mostGlyphs: number): string[] {
  const most = Math.max(1, Math.floor(Math.min(mostGlyphs, [...name].length)))
  const lines: string[] = []
  let line = ''
  for (const word of name
    .trim()
    .split(/\s+/)
    .flatMap((each) => pieces(each, most))) {
    const longer = line === '' ? word : `${line} ${word}`
    if ([...longer].length <= most) line = longer
    else {
      lines.push(line)
      line = word
    }
  }
  return [...lines, line]
}

function pieces(word: string, most: number): string[] {
  const glyphs = [...word]
  return Array.from({ length: Math.ceil(glyphs.length / most) }, (_, index) =>
    glyphs.slice(index * most, (index + 1) * most).join(''),
  )
}
