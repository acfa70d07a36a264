import { NotebookFailure } from './notebook-failure.ts'
import type { Store } from './store.ts'

/** An error and everything it was caused by or wraps, outermost first. */
function* causes(error: unknown): Generator<Error> {
  for (let next = error; next instanceof Error || next instanceof DOMException; ) {
    yield next
    const wrapped = 'inner' in next && next.inner ? next.inner : next.cause
    next = 'failures' in next && Array.isArray(next.failures) ? next.failures[0] : wrapped
  }
}

/**
 * What the database threw as a failure with its reason: no room, closed, newer, an id given twice. An error of no such kind is a programmer's
 * mistake and is handed on as it is.
 */
export function asFailure(error: unknown, store: Store): unknown {
  const chain = [...causes(error)]
  const known = chain.find((each) => each instanceof NotebookFailure)
  if (known) return known
  const names = chain.map((each) => each.name)
  if (names.includes('QuotaExceededError')) return new NotebookFailure('out-of-room', '', [], error)
  if (names.includes('ConstraintError'))
    return new NotebookFailure('refused-record', 'an id is already here', [], error)
  if (names.includes('DatabaseClosedError') || names.includes('InvalidStateError'))
    return new NotebookFailure(store.closedBecause, '', [], error)
  return error
}
