import { useLiveQuery } from 'dexie-react-hooks'
import { useMemo } from 'react'
import { useServices } from './services.ts'

/** Where it is kept that this device lies at a table, so that a reload or another tab does not take it away. */
const key = 'table-device'

export interface TableDevice {
  /** The trial at whose table the device lies; null while it is its baker's; undefined until that is read. */
  trialId: string | null | undefined
  lay: (trialId: string) => Promise<void>
  take: () => Promise<void>
}

/**
 * Whether this device lies at the table of a tasting: from when a taster sits down at it, or the Tasting place is opened on kept
 * codes, until it is taken away by a press that is logged, or the tasting is over. Meanwhile every other way is closed.
 */
export function useTableDevice(): TableDevice {
  const { notebook } = useServices()
  const kept = useLiveQuery(async () => (await notebook.draft(key)) ?? {}, [notebook])
  const acts = useMemo(
    () => ({
      lay: (trialId: string) => notebook.keepDraft(key, { trialId }),
      take: () => notebook.dropDraft(key),
    }),
    [notebook],
  )
  return { trialId: kept && (kept.trialId ?? null), ...acts }
}
