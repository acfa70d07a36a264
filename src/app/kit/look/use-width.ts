import { type RefObject, useLayoutEffect, useState } from 'react'
import { flushSync } from 'react-dom'

/**
 * The width of an element in pixels, kept up as it changes; `fallbackPixels` until it stands on the page. It is first taken as
 * the next frame begins and drawn in that very frame: to ask any sooner would hold what the page is still drawing.
 */
export function useWidth(ref: RefObject<HTMLElement | null>, fallbackPixels: number): number {
  const [pixels, setPixels] = useState(fallbackPixels)
  useLayoutEffect(() => {
    const element = ref.current
    if (!element) return
    const take = () => setPixels(element.clientWidth)
    const frame = requestAnimationFrame(() => flushSync(take))
    const watcher = new ResizeObserver(take)
    watcher.observe(element)
    return () => {
      cancelAnimationFrame(frame)
      watcher.disconnect()
    }
  }, [ref])
  return pixels
}
