import { startTransition, useDeferredValue, useEffect, useRef, useState } from 'react'
import { latestAsked } from './latest-asked.ts'
import { type OpenWorker, openWorker, type WorkerName } from './open-worker.ts'

/** What came of a question: nothing yet; an answer, kept while a newer question is worked out; or a failure. */
export type Asked<Answer> =
  | { state: 'working' }
  | { state: 'answered'; answer: Answer; newer: boolean }
  | { state: 'failed'; error: Error }

/** An answer that was asked for before: on its way, and there once it has come. */
export interface Ahead<Answer> {
  coming: Promise<Answer>
  answer: Answer | null
}

/**
 * The answer to a question as it stands, worked out in a worker that lives as long as whoever asks; null asks nothing. Of
 * questions that come while one is open only the last is asked. It is asked after the frame that shows what was typed,
 * since copying a question over to the worker takes its time. `ask` is read at the first render only, and so is `aheadOf`, which gives what
 * was asked for before: an answer that is there stands at the first render, one on its way is not asked for again.
 */
export function useAnswer<Name extends WorkerName, Question, Answer>(
  name: Name,
  question: Question | null,
  ask: (service: OpenWorker<Name>['service'], question: Question) => Promise<Answer>,
  aheadOf: (question: Question) => Ahead<Answer> | null = noneAhead,
): Asked<Answer> {
  const [{ asking, before, known }] = useState(() => ({
    ...{ asking: ask, before: aheadOf },
    known: knownOf(question, aheadOf),
  }))
  const [found, setFound] = useState<Asked<Answer>>(known?.found ?? { state: 'working' })
  const asker = useRef<((question: Question) => void) | null>(null)
  const afterFrame = useDeferredValue(question)
  useEffect(() => {
    let worker: OpenWorker<Name> | null = null
    const line = latestAsked(
      (asked: Question) => {
        const ahead = before(asked)
        if (ahead) return ahead.coming
        worker ??= openWorker(name)
        const asker = worker
        return asking(asker.service, asked).catch((cause: unknown) => {
          // It may be the worker that failed: what is asked next is asked of another.
          asker.end()
          if (worker === asker) worker = null
          throw cause
        })
      },
      // Drawn between frames: what is typed or pressed meanwhile does not wait for it.
      (answer) => startTransition(() => setFound({ state: 'answered', answer, newer: false })),
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
  }, [name, asking, before])
  useEffect(() => {
    if (afterFrame === null || afterFrame === known?.question) return
    setFound((last) => (last.state === 'answered' ? { ...last, newer: true } : last))
    asker.current?.(afterFrame)
  }, [afterFrame, known])
  return found
}

const noneAhead = () => null

function knownOf<Question, Answer>(
  question: Question | null,
  aheadOf: (question: Question) => Ahead<Answer> | null,
): { question: Question; found: Asked<Answer> } | null {
  if (question === null) return null
  const answer = aheadOf(question)?.answer ?? null
  return answer === null ? null : { question, found: { state: 'answered', answer, newer: false } }
}

/** The last answer, null before the first; a failure is thrown to the nearest error boundary. */
export function answerOf<Answer>(asked: Asked<Answer>): Answer | null {
  if (asked.state === 'failed') throw asked.error
  return asked.state === 'answered' ? asked.answer : null
}
