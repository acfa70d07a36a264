import type { Notebook } from '@/notebook/notebook.ts'

type Draft = Readonly<Record<string, string>>

/** Whether a ballot holds an answer or words, and not only when its code was first shown. */
export const isBegun = (draft: Draft | undefined): boolean =>
  Object.entries(draft ?? {}).some(([field, text]) => field !== 'startedAt' && text !== '')

/**
 * Goes from one code's unfinished ballot to another's. What was pressed stays under its code, or comes along where it was about the
 * other plate: then the two change places, so that nothing is lost. A ballot that was only looked at is forgotten: its
 * taster did not have that sample yet.
 */
export async function goToBallot(
  notebook: Pick<Notebook, 'draft' | 'keepDraft' | 'dropDraft'>,
  { from, to, along }: { from: string; to: string; along: boolean },
): Promise<void> {
  if (from === to) return
  const left = await notebook.draft(from)
  if (!isBegun(left)) return notebook.dropDraft(from)
  if (!along) return
  const other = await notebook.draft(to)
  await notebook.keepDraft(to, { ...left })
  await (isBegun(other) ? notebook.keepDraft(from, { ...other }) : notebook.dropDraft(from))
}
