import { createContext, useContext } from 'react'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

export const WholeTrialContext = createContext<WholeTrial | null>(null)

/** The open trial with everything that belongs to it, as the notebook has it now. Throws outside of a trial: a programmer's mistake. */
export function useWholeTrial(): WholeTrial {
  const whole = useContext(WholeTrialContext)
  if (!whole) throw new Error('useWholeTrial outside of a trial')
  return whole
}
