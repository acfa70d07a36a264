import type { FailureReason } from '@/core/record/failure-reason.ts'
import type { MovedOn } from '@/core/session/press/moved-on.ts'
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

/** True for the failure of a record that is stored and does not fit its shape. */
export function isDamaged(failure: unknown): boolean {
  return failure instanceof NotebookFailure && failure.reason === 'damaged'
}

/** A press that the log has moved on from: nothing of it is stored, and what stands against it is told. */
export class MovedOnFailure extends NotebookFailure {
  readonly movedOn: MovedOn

  constructor(movedOn: MovedOn) {
    super('moved-on', movedOn.why)
    this.movedOn = movedOn
  }
}
