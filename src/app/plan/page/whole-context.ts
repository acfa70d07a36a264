import { createContext, useContext } from 'react'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

export const WholeContext = createContext<WholeTrial | null>(null)

/** The trial around the open plan as the notebook has it: sessions, log, tasters' answers. */
export function useWhole(): WholeTrial {
  const whole = useContext(WholeContext)
  if (!whole) throw new Error('useWhole outside of the Plan page')
  return whole
}
