import { useLiveQuery } from 'dexie-react-hooks'
import { type ReactNode, useMemo } from 'react'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { Notebook } from '@/notebook/notebook.ts'
import { useServices } from './services.ts'
import { WholeTrialContext } from './use-whole-trial.ts'

interface WholeTrialProviderProps {
  trialId: string
  /** What stands here while the trial is read. */
  waiting: ReactNode
  /** What stands here when the notebook has no such trial. */
  missing: ReactNode
  children: ReactNode
}

/**
 * Reads one trial for everything below it: whole at first, then after each change only what is new, so that a record that
 * nobody changed stays the same object. Nothing below reads it again.
 */
export function WholeTrialProvider({
  trialId,
  waiting,
  missing,
  children,
}: WholeTrialProviderProps) {
  const { notebook } = useServices()
  const read = useMemo(() => readingOf(notebook, trialId), [notebook, trialId])
  const found = useLiveQuery(read, [read])
  if (found?.trialId !== trialId) return waiting
  if (!found.whole) return missing
  return <WholeTrialContext value={found.whole}>{children}</WholeTrialContext>
}

interface Found {
  trialId: string
  whole: WholeTrial | undefined
}

function readingOf(notebook: Notebook, trialId: string): () => Promise<Found> {
  let last: Found | undefined
  return async () => {
    const whole = await notebook.wholeTrial(trialId, last?.whole ?? null)
    if (!last || last.whole !== whole) last = { trialId, whole }
    return last
  }
}
