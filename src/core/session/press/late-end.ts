import { asAgreedSeconds, type StepRun } from '@/core/session/step-runs.ts'

/** Later than this after its planned end, nobody stood by: the press tells when it was remembered, not when it ended. */
const lateSeconds = 2 * 60 * 60

/**
 * When a running step should have ended (UTC ms), where its end is pressed at `now` (UTC ms) more than two hours after; null
 * where the press can tell the end. A step that is ended by its look counts as well: its expected length is planned too.
 */
export function lateEnd(run: StepRun, now: number): number | null {
  if (run.startedAt === null) return null
  const planned = run.startedAt + asAgreedSeconds(run) * 1000
  return now - planned > lateSeconds * 1000 ? planned : null
}
