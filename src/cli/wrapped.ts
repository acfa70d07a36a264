import { boundUnits } from '@/core/wording/words/bound-units.ts'

/** Characters across a terminal page, as terminals open. */
export const lineWidth = 80

/**
 * Text broken at blanks to a width; `lead` opens the first line, the others stand under it. Lines that the text itself
 * breaks stay broken, and a number keeps its unit beside it.
 */
export function wrapped(text: string, lead = '', width = lineWidth): string {
  const indent = ' '.repeat(Math.min([...lead].length, 4))
  return text
    .split('\n')
    .map((part, index) => wrappedLine(part, index === 0 ? lead : indent, indent, width))
    .join('\n')
}

function wrappedLine(text: string, lead: string, indent: string, width: number): string {
  const lines: string[] = []
  let line = lead
  let begun = false
  for (const word of boundUnits(text)
    .split(/[^\S\u00a0]+/)
    .filter(Boolean)) {
    if (begun && [...line].length + 1 + [...word].length > width) {
      lines.push(line)
      line = indent + word
    } else {
      line = begun ? `${line} ${word}` : line + word
    }
    begun = true
  }
  return [...lines, line.trimEnd()].join('\n').replaceAll('\u00a0', ' ')
}
