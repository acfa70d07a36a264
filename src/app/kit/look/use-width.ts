import { type RefObject, useLayoutEffect, useState } from 'react'

/** The width of an element in pixels, kept up as it changes; `fallbackPixels` until it stands on the page. */
export function useWidth(ref: RefObject<HTMLElement | null>, fallbackPixels: number): number {
  const [pixels, setPixels] = useState(fallbackPixels)
  useLayoutEffect(() => {
    const element = ref.current
    if (!element) return
    setPixels(element.clientWidth)
    const watcher = new ResizeObserver(() => setPixels(element.clientWidth))
    watcher.observe(element)
    return () => watcher.disconnect()
  }, [ref])
  return pixels
}
