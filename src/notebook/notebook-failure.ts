import type { FileTrouble } from '@/trial-file/trouble.ts'

const failureReasons = [
  /** The notebook was written by a newer version of the app; this one may not touch it. */
  'newer-database',
  /** Another tab holds an older notebook open and keeps this one from bringing it up to date. */
  'blocked',
  /** A newer version of the app has opened the notebook in another tab; this one has let go of it. */
  'closed-by-newer',
  'closed',
  /** The device has no room left; nothing of the last change was stored. */
  'out-of-room',
  /** What is stored does not fit its shape. */
  'damaged',
  'no-such-trial',
  /** A record that does not fit its shape, names something that is not there, or breaks a law of the log. */
  'refused-record',
  /** A kitchen thing that a trial names cannot be removed. */
  'in-use',
  /** Expectation, main response with its margin, and number of sessions are locked since the first mix. */
  'locked',
] as const
export type FailureReason = (typeof failureReasons)[number]

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
