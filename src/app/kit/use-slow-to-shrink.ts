import { useEffect, useState } from 'react'

/**
 * A height that grows at once and shrinks only when nothing asked for more for a while, so that what stands below does not
 * jump up and down with every key. At another width it starts anew.
 */
export function useSlowToShrink(
  pixels: number,
  widthPixels: number,
  waitMilliseconds: number,
): number {
  const [held, setHeld] = useState({ pixels, widthPixels })
  const rises = pixels > held.pixels || widthPixels !== held.widthPixels
  if (rises) setHeld({ pixels, widthPixels })
  const sinks = !rises && pixels < held.pixels
  useEffect(() => {
    if (!sinks) return
    const timer = setTimeout(() => setHeld({ pixels, widthPixels }), waitMilliseconds)
    return () => clearTimeout(timer)
  }, [sinks, pixels, widthPixels, waitMilliseconds])
  return sinks ? held.pixels : pixels
}
