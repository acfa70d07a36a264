import { useServices } from '@/app/services/services.ts'
import { useTable } from '@/app/tasting/tasting-context.ts'
import type { HostOfSlips } from '@/slip/take-return.ts'
import { type TookIn, takeInReturn } from '@/slip-host/take-in-return.ts'

/** Takes returns into the session at the table, against the trial as it stands at that moment. */
export function useTakeIn(): (
  host: HostOfSlips,
  text: string,
  anyway?: boolean,
) => Promise<TookIn> {
  const { notebook } = useServices()
  const { whole: shown, session } = useTable()
  return async (host, text, anyway = false) => {
    const whole = (await notebook.wholeTrial(shown.trial.id)) ?? shown
    return await takeInReturn(notebook, whole, session.id, host, text, anyway ? 'anyway' : 'ask')
  }
}
