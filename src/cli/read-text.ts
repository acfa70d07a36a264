import { readFileSync } from 'node:fs'
import { CommandTrouble } from './trouble.ts'

/**
 * The text of a file named at the terminal: UTF-8, or UTF-16 with its mark in front, as spreadsheets save "Unicode
 * text". Throws `CommandTrouble` with the file's name and the mend.
 */
export function readText(file: string): string {
  const bytes = bytesOf(file)
  const [first, second] = bytes
  if (first === 0xff && second === 0xfe) return new TextDecoder('utf-16le').decode(bytes)
  return bytes.toString('utf8')
}

function bytesOf(file: string): Buffer {
  try {
    return readFileSync(file)
  } catch (failure) {
    const code = (failure as NodeJS.ErrnoException).code
    if (code === 'ENOENT')
      throw new CommandTrouble(`${file}: there is no such file. Check the path.`)
    if (code === 'EISDIR') throw new CommandTrouble(`${file}: this is a folder. Name a file in it.`)
    throw new CommandTrouble(
      `${file}: cannot be read (${code ?? String(failure)}). Check that you may read it.`,
    )
  }
}
