import type { FailureReason } from '@/core/record/failure-reason.ts'
import type { FileTrouble } from '@/trial-file/trouble.ts'

/** Why the notebook could not do what was asked. Whatever was asked, nothing of it is stored then. */
export class NotebookFailure extends Error {
  readonly reason: FailureReason
  readonly troubles: FileTrouble[]
  override readonly name = 'NotebookFailure'

  constructor(reason: FailureReason, detail = '', troubles: FileTrouble[] = [], cause?: unknown) {
    super(detail === '' ? reason : `${reason}: ${detail}`, { cause })
    this.reason = reason
    this.troubles = troubles
  }
}
