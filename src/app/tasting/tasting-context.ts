import { createContext, useContext } from 'react'
import type { Session } from '@/core/session/session-record.ts'
import type { TastingState } from '@/core/tasting/tasting-state.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

export interface Table {
  whole: WholeTrial
  session: Session
  state: TastingState
}

export const TableContext = createContext<Table | null>(null)

/** The session that is being tasted. Throws outside the Tasting place: a programmer's mistake. */
export function useTable(): Table {
  const table = useContext(TableContext)
  if (!table) throw new Error('useTable outside of the tasting')
  return table
}
