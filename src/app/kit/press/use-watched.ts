import { useCallback } from 'react'
import { tellFailedWork } from '@/app/kit/page/failed-work.ts'
import { useThrown } from '@/app/kit/page/use-thrown.ts'
import { failureReasonOf } from '@/core/record/failure-reason.ts'

/**
 * For what a press sets going: what the notebook could not do is said at the foot of the page, and the page stays with
 * everything that was typed on it; any other failure is a fault of the program and goes to the nearest error boundary.
 */
export function useWatched(): (work: unknown) => void {
  const thrown = useThrown()
  return useCallback(
    (work: unknown) => {
      if (!(work instanceof Promise)) return
      thrown(
        work.catch((cause: unknown) => {
          if (failureReasonOf(cause) === null) throw cause
          tellFailedWork(cause)
        }),
      )
    },
    [thrown],
  )
}
