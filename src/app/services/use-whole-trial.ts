import { useLiveQuery } from 'dexie-react-hooks'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { useServices } from './services.ts'

/** A trial with everything that belongs to it, anew with every change in the notebook; undefined while it is opened. */
export function useWholeTrial(trialId: string): WholeTrial | undefined {
  const { notebook } = useServices()
  return useLiveQuery(() => notebook.wholeTrial(trialId), [notebook, trialId])
}
