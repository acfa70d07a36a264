/**
 * Asks one question at a time and, when several came meanwhile, only the last of them next: an answer is never older than
 * the one before it, and nothing queues up behind a fast typist. `stop` makes it forget what is still open.
 */
export function latestAsked<Question, Answer>(
  ask: (question: Question) => Promise<Answer>,
  onAnswer: (answer: Answer) => void,
  onFailure: (cause: unknown) => void,
): { ask: (question: Question) => void; stop: () => void } {
  let busy = false
  let stopped = false
  let next: { question: Question } | null = null

  const run = (question: Question) => {
    busy = true
    ask(question)
      .then((answer) => {
        if (!stopped) onAnswer(answer)
      })
      .catch((cause: unknown) => {
        if (!stopped) onFailure(cause)
      })
      .finally(() => {
        busy = false
        const waiting = next
        next = null
        if (waiting && !stopped) run(waiting.question)
      })
  }
  return {
    ask: (question) => {
      if (busy) next = { question }
      else run(question)
    },
    stop: () => {
      stopped = true
    },
  }
}
