import { type RefObject, useLayoutEffect, useState } from 'react'
import { flushSync } from 'react-dom'

/**
 * The width of an element in pixels, kept up as it changes; `fallbackPixels` until it stands on the page. It is taken when the
 * page has been laid out for the frame and drawn in that very frame: to ask before would lay a large page out once more.
 */
export function useWidth(ref: RefObject<HTMLElement | null>, fallbackPixels: number): number {
  const [pixels, setPixels] = useState(fallbackPixels)
  useLayoutEffect(() => {
    const element = ref.current
    if (!element) return
    const watcher = new ResizeObserver(() => flushSync(() => setPixels(element.clientWidth)))
    watcher.observe(element)
    return () => watcher.disconnect()
  }, [ref])
  return pixels
}
