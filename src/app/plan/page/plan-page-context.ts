import { createContext, useContext } from 'react'
import { type StoreApi, useStore } from 'zustand'
import type { PlanPage } from './plan-page.ts'

export const PlanPageContext = createContext<StoreApi<PlanPage> | null>(null)

/** The page's own store. Throws outside of the Plan page: a programmer's mistake. */
export function usePlanStore(): StoreApi<PlanPage> {
  const store = useContext(PlanPageContext)
  if (!store) throw new Error('usePlanStore outside of the Plan page')
  return store
}

/** One slice of the open plan page; a component re-renders only when its slice changes. */
export function usePlanPage<Slice>(select: (page: PlanPage) => Slice): Slice {
  return useStore(usePlanStore(), select)
}

type PlanActions = Pick<
  PlanPage,
  | 'change'
  | 'afterKey'
  | 'changeSaid'
  | 'takeOut'
  | 'takeBack'
  | 'dropUndo'
  | 'dropRefused'
  | 'draft'
  | 'markUnfinished'
  | 'jumpTo'
  | 'turn'
  | 'flush'
>

/** What the open page can do. It stays the same as long as the page is open, so nothing need watch it. */
export function usePlanActions(): PlanActions {
  return usePlanStore().getState()
}
