import { useCallback, useState } from 'react'

/**
 * For work that a press starts and nobody awaits: when the promise handed in fails, the failure is thrown at the next
 * rendering, to the nearest error boundary, so that it is never swallowed. Anything but a promise is let through.
 */
export function useThrown(): (work: unknown) => void {
  const [failure, setFailure] = useState<{ cause: unknown } | null>(null)
  if (failure) throw failure.cause
  return useCallback((work: unknown) => {
    if (work instanceof Promise) work.catch((cause: unknown) => setFailure({ cause }))
  }, [])
}
