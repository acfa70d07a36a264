import { createStore } from 'zustand'
import { type FailureReason, failureReasonOf } from '@/core/record/failure-reason.ts'

/** What a press set going and what came to nothing: the notebook's reason, or null with what the program says. */
export interface FailedWork {
  reason: FailureReason | null
  detail: string
}

/** The last press that came to nothing, until it is read or another one succeeds in its place. */
export const failedWork = createStore<{ last: FailedWork | null }>(() => ({ last: null }))

export function tellFailedWork(cause: unknown): void {
  const detail = cause instanceof Error ? cause.message : String(cause)
  failedWork.setState({ last: { reason: failureReasonOf(cause), detail } })
}

export const forgetFailedWork = () => failedWork.setState({ last: null })
