import { atShape } from '@/core/record/id-and-stamp.ts'
import { type WholeTrial, wholeTrialShape } from '@/core/whole-trial/whole-trial.ts'
import { mapLeaves } from './map-leaves.ts'

/**
 * The same trial lived earlier or later: every moment in it moved by the same milliseconds, so that all waits stay as they
 * were. The kitchen's own moments stay. Throws when a moment would fall before 1970: a programmer's mistake.
 */
export function shiftStamps(whole: WholeTrial, byMilliseconds: number): WholeTrial {
  const change = (at: unknown) => Number(at) + byMilliseconds
  const moved = wholeTrialShape.parse(
    mapLeaves(wholeTrialShape, atShape, wholeTrialShape.parse(whole), change),
  )
  return { ...moved, kitchen: whole.kitchen }
}

/** The last moment anything was logged or scored; where nothing was, the trial's beginning. UTC milliseconds. */
export function lastMoment(whole: WholeTrial): number {
  const moments = [...whole.events, ...whole.ballots].map((each) => each.at)
  return moments.reduce((last, at) => Math.max(last, at), whole.trial.createdAt)
}
