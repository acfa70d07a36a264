import type { OpenNotebook } from '@/notebook/notebook.ts'

/** Where the table of scores that is being read lies in the notebook's drafts. */
export const scoresDraftKey = 'scores'

/** A longer table is used and not kept: it would be written anew at every choice. */
export const longestKept = 4_000_000

/** True for a table as spreadsheets save it, by its name or kind; a trial file is none. */
export function isTable({ name, type }: Pick<File, 'name' | 'type'>): boolean {
  return /\.(csv|tsv|txt)$/i.test(name) || type === 'text/csv'
}

/** The text of a table as spreadsheets save it: UTF-8 with or without its mark, or UTF-16 with one. */
export async function tableText(file: Blob): Promise<string> {
  const bytes = new Uint8Array(await file.arrayBuffer())
  const [first, second] = bytes
  if (first === 0xff && second === 0xfe) return new TextDecoder('utf-16le').decode(bytes)
  if (first === 0xfe && second === 0xff) return new TextDecoder('utf-16be').decode(bytes)
  return new TextDecoder('utf-8').decode(bytes)
}

/** Lays a table down where the import of scores finds it; of one too long to be kept only its name, to be chosen there again. */
export async function layDownTable(
  notebook: Pick<OpenNotebook, 'keepDraft'>,
  file: File,
): Promise<void> {
  const text = await tableText(file)
  const kept = text.length <= longestKept ? { text } : {}
  await notebook.keepDraft(scoresDraftKey, { name: file.name, ...kept })
}
