import { readFileSync } from 'node:fs'
import { CommandTrouble } from './trouble.ts'

/** The text of a file named at the terminal. Throws `CommandTrouble` with the file's name and the mend. */
export function readText(file: string): string {
  try {
    return readFileSync(file, 'utf8')
  } catch (failure) {
    const code = (failure as NodeJS.ErrnoException).code
    if (code === 'ENOENT')
      throw new CommandTrouble(`${file}: there is no such file. Check the path.`)
    if (code === 'EISDIR') throw new CommandTrouble(`${file}: this is a folder. Name a file in it.`)
    throw new CommandTrouble(`${file}: cannot be read (${code ?? String(failure)}).`)
  }
}
