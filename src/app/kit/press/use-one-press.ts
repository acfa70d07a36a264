import { useRef, useState } from 'react'
import { useThrown } from '@/app/kit/page/use-thrown.ts'

/**
 * Sets off one piece of work at a time: while the promise of the last is open a further press does nothing. A promise that
 * fails is thrown to the nearest error boundary, so that no failure stays unseen.
 */
export function useOnePress(): { busy: boolean; run: (work: () => unknown) => void } {
  const [busy, setBusy] = useState(false)
  const open = useRef(false)
  const watch = useThrown()
  const run = (work: () => unknown) => {
    if (open.current) return
    const outcome = work()
    if (!(outcome instanceof Promise)) return
    open.current = true
    setBusy(true)
    watch(
      outcome.finally(() => {
        open.current = false
        setBusy(false)
      }),
    )
  }
  return { busy, run }
}
