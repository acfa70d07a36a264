import { useContext } from 'react'
import type { Manner } from '@/core/units/manner.ts'
import { MannerContext } from './manner-context.ts'

/** The manner in which figures are shown and typed now; a part that asks is drawn anew when it changes. */
export function useManner(): Manner {
  return useContext(MannerContext)
}
