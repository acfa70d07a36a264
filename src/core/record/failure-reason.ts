/** Why the notebook could not do what was asked. Whatever was asked, nothing of it is stored then. */
export const failureReasons = [
  /** The notebook was written by a newer version of the app; this one may not touch it. */
  'newer-database',
  /** Another tab holds an older notebook open and keeps this one from bringing it up to date. */
  'blocked',
  /** A newer version of the app has opened the notebook in another tab; this one has let go of it. */
  'closed-by-newer',
  /** The site's data were cleared, from another window or the browser's settings: the notebook is gone. */
  'cleared',
  'closed',
  /** The device has no room left; nothing of the last change was stored. */
  'out-of-room',
  /** What is stored does not fit its shape. */
  'damaged',
  'no-such-trial',
  /** A record that does not fit its shape, names something that is not there, or breaks a law of the log. */
  'refused-record',
  /** A press at the bench or table that the log has moved on from, perhaps in another window. */
  'moved-on',
  'house-moved-on',
  /** A kitchen thing that a trial names cannot be removed. */
  'in-use',
  /** Expectation, main response with its margin, and number of sessions are locked since the first mix. */
  'locked',
  /** Looks, locks, unsealings, and an early close once the codes are open, cannot be taken back or corrected. */
  'lasting',
  /** The codes open when the last ballot is in, or when the tasting was closed with a reason; not before. */
  'still-awaited',
  /** The tasting was closed or its codes are open: no ballot is taken or changed any more. */
  'tasting-over',
] as const
export type FailureReason = (typeof failureReasons)[number]

/** The reason that a failure carries; null for one that comes from nowhere in the notebook. */
export function failureReasonOf(failure: unknown): FailureReason | null {
  if (!(failure instanceof Error) || !('reason' in failure)) return null
  return failureReasons.find((reason) => reason === failure.reason) ?? null
}
