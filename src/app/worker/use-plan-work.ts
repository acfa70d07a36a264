import { useDeferredValue, useEffect, useRef, useState } from 'react'
import { latestAsked } from './latest-asked.ts'
import { type PlanWorker, startPlanWorker } from './plan-worker-client.ts'

/**
 * An answer worked out off the screen for the question as it stands; the last one stays while the next is computed, null
 * before the first. It is asked for after the frame that shows what was typed, since copying a plan over to the worker
 * takes its time. `ask` is read at the first render only. A failure is thrown to the nearest error boundary.
 */
export function usePlanWork<Question, Answer>(
  question: Question,
  ask: (service: PlanWorker['service'], question: Question) => Promise<Answer>,
): Answer | null {
  const [answer, setAnswer] = useState<Answer | null>(null)
  const [failure, setFailure] = useState<{ cause: unknown } | null>(null)
  const [asking] = useState(() => ask)
  const latest = useRef<((question: Question) => void) | null>(null)
  const afterFrame = useDeferredValue(question)
  useEffect(() => {
    const worker = startPlanWorker()
    const line = latestAsked(
      (asked: Question) => asking(worker.service, asked),
      setAnswer,
      (cause) => setFailure({ cause }),
    )
    latest.current = line.ask
    return () => {
      latest.current = null
      line.stop()
      worker.end()
    }
  }, [asking])
  useEffect(() => latest.current?.(afterFrame), [afterFrame])
  if (failure) throw failure.cause
  return answer
}
