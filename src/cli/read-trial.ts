import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { fileTroublesMend, fileTroubleText } from '@/core/wording/files/file-trouble-text.ts'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'
import { readText } from './read-text.ts'
import { CommandTrouble } from './trouble.ts'

/** The trial in a file. Throws `CommandTrouble` that lists every trouble with its place. */
export function readTrial(file: string): WholeTrial {
  return trialInText(file, readText(file))
}

/** The trial in the text of a file. Throws as `readTrial` does. */
export function trialInText(file: string, text: string): WholeTrial {
  const read = readTrialFile(text)
  if (read.ok) return read.whole
  throw new CommandTrouble(
    [...read.troubles.map(fileTroubleText), fileTroublesMend(read.troubles)]
      .filter((said) => said !== '')
      .map((said) => `${file}: ${said}`)
      .join('\n'),
  )
}

/** What every verb answers about a trial whose codes are sealed, unless it is told to look. */
export function stillSealed(file: string): CommandTrouble {
  return new CommandTrouble(
    `${file}: still-sealed. A tasting is under way and this would give levels away. Unseal it in the app, or ask with --unseal; the file cannot record that look.`,
  )
}
