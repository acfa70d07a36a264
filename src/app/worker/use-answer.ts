import { useDeferredValue, useEffect, useRef, useState } from 'react'
import { latestAsked } from './latest-asked.ts'
import { type OpenWorker, openWorker, type WorkerName } from './open-worker.ts'

/** What came of a question: nothing yet; an answer, kept while a newer question is worked out; or a failure. */
export type Asked<Answer> =
  | { state: 'working' }
  | { state: 'answered'; answer: Answer; newer: boolean }
  | { state: 'failed'; error: Error }

/**
 * The answer to a question as it stands, worked out in a worker that lives as long as whoever asks; null asks nothing. Of
 * questions that come while one is open only the last is asked. It is asked after the frame that shows what was typed,
 * since copying a question over to the worker takes its time. `ask` is read at the first render only.
 */
export function useAnswer<Name extends WorkerName, Question, Answer>(
  name: Name,
  question: Question | null,
  ask: (service: OpenWorker<Name>['service'], question: Question) => Promise<Answer>,
): Asked<Answer> {
  const [found, setFound] = useState<Asked<Answer>>({ state: 'working' })
  const [asking] = useState(() => ask)
  const asker = useRef<((question: Question) => void) | null>(null)
  const afterFrame = useDeferredValue(question)
  useEffect(() => {
    let worker: OpenWorker<Name> | null = null
    const line = latestAsked(
      (asked: Question) => {
        worker ??= openWorker(name)
        return asking(worker.service, asked)
      },
      (answer) => setFound({ state: 'answered', answer, newer: false }),
      (cause) =>
        setFound({
          state: 'failed',
          error: cause instanceof Error ? cause : new Error(String(cause)),
        }),
    )
    asker.current = line.ask
    return () => {
      asker.current = null
      line.stop()
      worker?.end()
    }
  }, [name, asking])
  useEffect(() => {
    if (afterFrame === null) return
    setFound((last) => (last.state === 'answered' ? { ...last, newer: true } : last))
    asker.current?.(afterFrame)
  }, [afterFrame])
  return found
}

/** The last answer, null before the first; a failure is thrown to the nearest error boundary. */
export function answerOf<Answer>(asked: Asked<Answer>): Answer | null {
  if (asked.state === 'failed') throw asked.error
  return asked.state === 'answered' ? asked.answer : null
}
