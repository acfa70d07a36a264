/** What is wrong with a trial file, and where: by line and column where it is no JSON, else by JSON Pointer. */
export type FileTrouble =
  | { reason: 'not-json'; line: number; column: number; detail: string }
  | { reason: 'not-a-trial-file' }
  | { reason: 'newer-version'; found: number; known: number }
  | { reason: 'migration-failed'; fromVersion: number; toVersion: number; detail: string }
  | { reason: 'shape'; pointer: string; expected: string; found: string }
  | { reason: 'reference'; pointer: string; names: string }

/** More troubles than this help nobody: a reader answers with the first of them. */
export const mostTroubles = 50
