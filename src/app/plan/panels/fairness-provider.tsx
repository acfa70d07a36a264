import type { ReactNode } from 'react'
import { FairnessContext, useAskedFairness } from './use-fairness.ts'

/** Holds the fairness check of the open plan for the rows, the folded row and the foot that show it. */
export function FairnessProvider({ children }: { children: ReactNode }) {
  return <FairnessContext value={useAskedFairness()}>{children}</FairnessContext>
}
