import { useRef, useState } from 'react'
import { forgetFailedWork } from '@/app/kit/page/failed-work.ts'
import { useWatched } from './use-watched.ts'

/**
 * Sets off one piece of work at a time: while the promise of the last is open a further press does nothing. What the
 * notebook could not do is said at the foot of the page; any other failure is thrown to the nearest error boundary.
 */
export function useOnePress(): { busy: boolean; run: (work: () => unknown) => void } {
  const [busy, setBusy] = useState(false)
  const open = useRef(false)
  const watch = useWatched()
  const run = (work: () => unknown) => {
    if (open.current) return
    const outcome = work()
    if (!(outcome instanceof Promise)) return
    open.current = true
    setBusy(true)
    forgetFailedWork()
    watch(
      outcome.finally(() => {
        open.current = false
        setBusy(false)
      }),
    )
  }
  return { busy, run }
}
