import { useServices } from '@/app/services/services.ts'
import type { NewEvent } from '@/core/session/press/new-event.ts'
import { useTable } from './tasting-context.ts'

type TableEntry = NewEvent extends infer Each
  ? Each extends NewEvent
    ? Omit<Each, 'trialId' | 'sessionId'>
    : never
  : never

/** Logs what happens at the table: who came, left or declined, an early close, the unsealing. */
export function useTableLog(): (entry: TableEntry) => Promise<void> {
  const { notebook } = useServices()
  const { whole, session } = useTable()
  return async (entry) => {
    await notebook.log({ ...entry, trialId: whole.trial.id, sessionId: session.id })
  }
}
