import type { BlindView } from './blind-view.ts'

/** Seconds from a sealed serving to the next, after so many were tasted: the plan's rest, or its longer pause. */
export function restAfter(rest: BlindView['rest'], tasted: number): number {
  const { restSeconds = 0, pauseAfter, pauseSeconds = 0 } = rest
  const long = pauseAfter !== undefined && tasted > 0 && tasted % pauseAfter === 0
  return long ? Math.max(restSeconds, pauseSeconds) : restSeconds
}
