import { createStore } from 'zustand'
import type { OpenNotebook } from '@/notebook/notebook.ts'

/** What the browser said when it was asked to keep the notebook for good; null while nobody need know. */
export const storageAsked = createStore<{ answer: 'asking' | 'kept' | 'not-kept' | null }>(() => ({
  answer: null,
}))

const key = 'storage-asked'

/**
 * Asks the browser, once, at the first trial of one's own, not to clear the notebook when the device runs short of room.
 * Some browsers then ask the person, so the reason is shown beside it.
 */
export async function askToKeepStorage(
  notebook: Pick<OpenNotebook, 'draft' | 'keepDraft'>,
): Promise<void> {
  if (!navigator.storage?.persist || (await notebook.draft(key))) return
  await notebook.keepDraft(key, { asked: 'yes' })
  if (await navigator.storage.persisted()) return
  storageAsked.setState({ answer: 'asking' })
  const kept = await navigator.storage.persist()
  storageAsked.setState({ answer: kept ? 'kept' : 'not-kept' })
}
