const lineWidth = 92

/** Text broken at blanks to the width of a terminal page; `lead` opens the first line, the others stand under it. */
export function wrapped(text: string, lead = ''): string {
  const indent = ' '.repeat(Math.min([...lead].length, 4))
  const lines: string[] = []
  let line = lead
  for (const word of text.split(/\s+/).filter(Boolean)) {
    const begun = line.trim() !== '' && line !== lead
    if (begun && [...line].length + 1 + [...word].length > lineWidth) {
      lines.push(line)
      line = indent + word
    } else {
      line = line === lead || line === indent ? line + word : `${line} ${word}`
    }
  }
  return [...lines, line].join('\n')
}
