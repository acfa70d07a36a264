import { useEffect, useState } from 'react'

/**
 * A size that grows at once and shrinks only when nothing asked for more for a while, so that what stands beside or below it
 * does not jump with every key. In another `setting`, such as another width of the window, it starts anew.
 */
export function useSlowToShrink(size: number, setting: number, waitMilliseconds: number): number {
  const [held, setHeld] = useState({ size, setting })
  const rises = size > held.size || setting !== held.setting
  if (rises) setHeld({ size, setting })
  const sinks = !rises && size < held.size
  useEffect(() => {
    if (!sinks) return
    const timer = setTimeout(() => setHeld({ size, setting }), waitMilliseconds)
    return () => clearTimeout(timer)
  }, [sinks, size, setting, waitMilliseconds])
  return sinks ? held.size : size
}
