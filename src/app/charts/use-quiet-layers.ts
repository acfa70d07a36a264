import { type RefObject, useLayoutEffect } from 'react'

/**
 * Keeps the drawing library's own layers out of the tab order: the browser takes an SVG group that listens for focus
 * (as every portal's container does) as a stop of its own, though nothing is there to be read.
 */
export function useQuietLayers(ref: RefObject<HTMLElement | null>): void {
  useLayoutEffect(() => {
    const section = ref.current
    if (!section) return
    const quiet = () => {
      for (const layer of section.querySelectorAll('g[class*="zIndex-layer"]:not([tabindex])'))
        layer.setAttribute('tabindex', '-1')
    }
    quiet()
    const watcher = new MutationObserver(quiet)
    watcher.observe(section, { childList: true, subtree: true })
    return () => watcher.disconnect()
  }, [ref])
}
