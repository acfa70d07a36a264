import { useLiveQuery } from 'dexie-react-hooks'
import { useServices } from '@/app/services/services.ts'

export interface KeptSeat {
  /** Who sits at this device; null for nobody, undefined until that is read. */
  tasterId: string | null | undefined
  sit: (tasterId: string) => Promise<void>
  rise: () => Promise<void>
}

/** Who sits at this device for a trial: kept, so that a reload, the way back or a turned phone leaves them in their seat. */
export function useSeat(trialId: string): KeptSeat {
  const { notebook } = useServices()
  const key = `seat/${trialId}`
  const kept = useLiveQuery(async () => (await notebook.draft(key)) ?? {}, [notebook, key])
  return {
    tasterId: kept && (kept.tasterId ?? null),
    sit: (tasterId) => notebook.keepDraft(key, { tasterId }),
    rise: () => notebook.dropDraft(key),
  }
}
