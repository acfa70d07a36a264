import { useCallback, useEffect, useRef, useState } from 'react'
import { tellFailedWork } from './failed-work.ts'

/**
 * For work that nobody awaits: when the promise handed in fails, the failure is thrown at the next
 * rendering, to the nearest error boundary, so that it is never swallowed. Where the part is gone by then, it is said at the
 * foot of the page. Anything but a promise is let through.
 */
export function useThrown(): (work: unknown) => void {
  const [failure, setFailure] = useState<{ cause: unknown } | null>(null)
  const onPage = useRef(false)
  useEffect(() => {
    onPage.current = true
    return () => {
      onPage.current = false
    }
  }, [])
  if (failure) throw failure.cause
  return useCallback((work: unknown) => {
    if (!(work instanceof Promise)) return
    work.catch((cause: unknown) => (onPage.current ? setFailure({ cause }) : tellFailedWork(cause)))
  }, [])
}
