/** What is wrong with a file someone wants to read in, as the reader of trial files reports it. */
export type TroubleToSay =
  | { reason: 'not-json'; line: number; column: number; detail: string }
  | { reason: 'not-a-trial-file' }
  | { reason: 'newer-version'; found: number; known: number }
  | { reason: 'shape'; pointer: string; expected: string; found: string }
  | { reason: 'reference'; pointer: string; names: string }
  | { reason: 'migration-failed'; fromVersion: number; toVersion: number }

/** One trouble in one sentence with its place, and the mend where it is the trouble's own. The file named stays untouched; the caller says which file. */
export function fileTroubleText(trouble: TroubleToSay): string {
  switch (trouble.reason) {
    case 'not-json':
      return `Line ${trouble.line}, column ${trouble.column} is not readable as JSON (${trouble.detail}). The file may have been cut short or edited; export it again.`
    case 'not-a-trial-file':
      return 'This is not a trial file. Choose a file that was exported as a trial.'
    case 'newer-version':
      return `This file is of version ${trouble.found}; this program reads up to version ${trouble.known}. Update the program, then read it again.`
    case 'shape':
      return `At ${placeText(trouble.pointer)}: expected ${trouble.expected}, found ${trouble.found}.`
    case 'reference':
      if (trouble.pointer === '/trial/follows/trialId')
        return 'The trial says that it follows itself. Take its “follows” out, or name the trial it carries on from.'
      return `At ${placeText(trouble.pointer)}: names ${trouble.names}, which the file does not hold.`
    case 'migration-failed':
      return `This file of version ${trouble.fromVersion} could not be brought to version ${trouble.toVersion}; it stays as it was. Please report it as a bug with the file.`
  }
}

/** What to do about troubles of shape or reference, said once below however many there are; empty where each says its own. */
export function fileTroublesMend(troubles: readonly TroubleToSay[]): string {
  return troubles.some(({ reason }) => reason === 'shape' || reason === 'reference')
    ? 'Mend each place named, or export the trial again.'
    : ''
}

function placeText(pointer: string): string {
  return pointer === '' ? 'the top of the file' : pointer
}
