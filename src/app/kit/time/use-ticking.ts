import { useEffect, useState, useSyncExternalStore } from 'react'

const everyMilliseconds = 1000
const waiting = new Set<() => void>()
let timer: ReturnType<typeof setInterval> | undefined

/** One beat for all that tick on the page, so that they change in one frame; it stops when nobody listens. */
function onBeat(listener: () => void): () => void {
  const beat = () => {
    for (const each of waiting) each()
  }
  waiting.add(listener)
  timer ??= setInterval(beat, everyMilliseconds)
  return () => {
    waiting.delete(listener)
    if (waiting.size > 0) return
    clearInterval(timer)
    timer = undefined
  }
}

function onBeatOrBack(listener: () => void): () => void {
  const stop = onBeat(listener)
  document.addEventListener('visibilitychange', listener)
  return () => {
    stop()
    document.removeEventListener('visibilitychange', listener)
  }
}

/**
 * What a part shows of the clock, such as a text that says the minute: looked at every second and at once when the page comes
 * back into view, and drawn anew only when it says something else.
 */
export function useShownOfClock<Shown extends string | number | boolean | null>(
  clock: () => number,
  shown: (now: number) => Shown,
): Shown {
  return useSyncExternalStore(onBeatOrBack, () => shown(clock()))
}

/** The clock's reading, renewed every second and at once when the page comes back into view. For the smallest part that shows it. */
export function useTicking(clock: () => number): number {
  const [reading, setReading] = useState(clock)
  useEffect(() => {
    return onBeatOrBack(() => setReading(clock()))
  }, [clock])
  return reading
}
