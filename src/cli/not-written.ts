/** Why a file was not written, by the system's code, with the mend. */
const notWritten: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such folder. Name a folder that is there.',
  ENOTDIR: 'a part of this path is no folder. Name a folder that is there.',
  EISDIR: 'this is a folder. Name a file in it.',
  EACCES: 'may not be written. Name a folder of your own.',
  EROFS: 'this disk takes no writing. Name a folder on another.',
  ENOSPC: 'the disk is full. Make room, or name a folder on another.',
}

/** What came of writing a file that could not be written. */
export function notWrittenText(path: string, failure: unknown): string {
  const code = (failure as NodeJS.ErrnoException).code ?? String(failure)
  return `${path}: ${notWritten[code] ?? `cannot be written (${code}).`}`
}
