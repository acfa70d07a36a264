import { useEffect, useState } from 'react'

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

/** The clock's reading, renewed every second and at once when the page comes back into view. For the smallest part that shows it. */
export function useTicking(clock: () => number): number {
  const [reading, setReading] = useState(clock)
  useEffect(() => {
    const tick = () => setReading(clock())
    const stop = onBeat(tick)
    document.addEventListener('visibilitychange', tick)
    return () => {
      stop()
      document.removeEventListener('visibilitychange', tick)
    }
  }, [clock])
  return reading
}
