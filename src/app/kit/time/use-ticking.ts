import { useEffect, useState } from 'react'

/** The clock's reading, renewed every `everyMilliseconds` and at once when the page comes back into view. */
export function useTicking(now: () => number, everyMilliseconds = 1000): number {
  const [reading, setReading] = useState(now)
  useEffect(() => {
    const tick = () => setReading(now())
    const timer = setInterval(tick, everyMilliseconds)
    document.addEventListener('visibilitychange', tick)
    return () => {
      clearInterval(timer)
      document.removeEventListener('visibilitychange', tick)
    }
  }, [now, everyMilliseconds])
  return reading
}
