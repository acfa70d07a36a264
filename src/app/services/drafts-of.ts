import { failureReasonOf } from '@/core/record/failure-reason.ts'
import type { Notebook } from '@/notebook/notebook.ts'
import { forgetUnkept, showUnkept } from './unkept.ts'

/**
 * Where a form's unfinished input is kept. What could not be kept (`what`, as a person would call it) stays on the form and
 * is shown wherever the person goes, until it is kept or given up.
 */
export function draftsOf(
  notebook: Pick<Notebook, 'draft' | 'keepDraft' | 'dropDraft'>,
  key: string,
  what: string,
) {
  const unkeptKey = `draft/${key}`
  const kept = async (text: string, write: () => Promise<void>): Promise<void> => {
    try {
      await write()
      forgetUnkept(unkeptKey)
    } catch (cause) {
      const retry = () => kept(text, write)
      const giveUp = () => forgetUnkept(unkeptKey)
      showUnkept({ key: unkeptKey, what, text, reason: failureReasonOf(cause), retry, giveUp })
    }
  }
  return {
    load: () => notebook.draft(key),
    save: (values: Record<string, string>) =>
      kept(Object.values(values).filter(Boolean).join(' · ').slice(0, 300), () =>
        notebook.keepDraft(key, values),
      ),
    drop: () => kept('', () => notebook.dropDraft(key)),
  }
}
