import { useEffect } from 'react'
import { arrivesAt } from '@/app/kit/page/arriving-at.ts'
import { usePlanPage } from './plan-page-context.ts'

/** Brings a part into view when the way to this page led to it, as soon as what it shows is there. */
export function useArrivalHere(part: string, isThere: boolean): void {
  const jumpTo = usePlanPage((page) => page.jumpTo)
  useEffect(() => {
    if (isThere && arrivesAt(part)) jumpTo(part)
  }, [part, isThere, jumpTo])
}
