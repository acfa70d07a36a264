import { asAgreedSeconds, type StepRun, waitSeconds } from '@/core/session/step-runs.ts'

/** What ending a rest now would cost. Seconds. */
export interface EarlyEnd {
  leftSeconds: number
  restedSeconds: number
  plannedSeconds: number
  /** How long the same rest was for each dough or piece that is through with it. */
  others: { unit: StepRun['unit']; restedSeconds: number }[]
}

/**
 * What it costs to end a running step at `now` (UTC ms) although its rest has longer to go than it is good to; null for a step
 * that no clock ends, a bake, and a rest that is over. A rest begins when the hands are off; where that was not said, after the
 * planned work.
 */
export function earlyEnd(run: StepRun, runs: readonly StepRun[], now: number): EarlyEnd | null {
  const { step } = run
  if (step.kind === 'bake' || step.endsBy.by !== 'clock' || step.waitSeconds === 0) return null
  const restedSeconds = Math.max(0, restSeconds(run, now) ?? 0)
  const plannedSeconds = waitSeconds(run)
  const leftSeconds = plannedSeconds - restedSeconds
  if (leftSeconds <= step.earlySeconds) return null
  const others = runs.flatMap((other) => {
    if (other.step.id !== step.id || other.repeat !== run.repeat || other.unit.id === run.unit.id)
      return []
    const rested = other.stoppedAt === null ? null : restSeconds(other, other.stoppedAt)
    return rested === null || rested < 0 ? [] : [{ unit: other.unit, restedSeconds: rested }]
  })
  return { leftSeconds, restedSeconds, plannedSeconds, others }
}

function restSeconds({ startedAt, handsOffAt, step }: StepRun, until: number): number | null {
  if (startedAt === null) return null
  return (until - (handsOffAt ?? startedAt + step.handsSeconds * 1000)) / 1000
}

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
