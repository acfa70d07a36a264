import { wordsInLines } from './words-in-lines.ts'

export interface NamedFace {
  letter: string | undefined
  name: string
}

export interface LevelFaces {
  /** What stands on each tab, line by line. */
  lines: string[][]
  /** What each number stands for, where names are too long for tabs and these wear numbers; else empty. */
  key: string[]
}

/** The option of a choice by its place among them and its name, where its tab has room for the number alone. */
export const numberedName = (index: number, name: string) => `${index + 1}: ${name}`

/**
 * What the tabs of a choice wear in rooms of so many glyphs: their letters and whole names in at most so many lines, or all of them
 * numbers, never a name cut short.
 */
export function levelFaces(
  options: readonly NamedFace[],
  mostGlyphs: number,
  mostLines: number,
): LevelFaces {
  const faceOf = (letter: string | undefined, name: string) =>
    [letter, name].filter(Boolean).join(' ')
  const named = options.map(({ letter, name }) => wordsInLines(faceOf(letter, name), mostGlyphs))
  if (named.every((lines) => lines.length <= mostLines)) return { lines: named, key: [] }
  return {
    lines: options.map(({ letter }, index) => [faceOf(letter, String(index + 1))]),
    key: options.map(({ name }, index) => numberedName(index, name)),
  }
}
