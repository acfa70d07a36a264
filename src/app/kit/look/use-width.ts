import { type RefObject, useLayoutEffect, useState } from 'react'
import { flushSync } from 'react-dom'

/**
 * The width of an element in pixels, kept up as it changes; `fallbackPixels` until it stands on the page, the last
 * width while it is hidden. It is told once the frame is laid out and before it is painted, so that asking for it lays nothing
 * out. The element must have no height of its own: what is drawn by its width would otherwise change its size again, which the
 * browser reports as a loop.
 */
export function useWidth(ref: RefObject<HTMLElement | null>, fallbackPixels: number): number {
  const [pixels, setPixels] = useState(fallbackPixels)
  useLayoutEffect(() => (ref.current ? watchWidth(ref.current, setPixels) : undefined), [ref])
  return pixels
}

type Tell = (pixels: number) => void

const watched = new Map<Element, Tell>()
let watcher: ResizeObserver | undefined

/** One observer for all, so that what they tell in one frame is drawn at once. */
function watchWidth(element: HTMLElement, tell: Tell): () => void {
  watcher ??= new ResizeObserver((entries) =>
    flushSync(() => {
      for (const { target } of entries)
        if (target.clientWidth > 0) watched.get(target)?.(target.clientWidth)
    }),
  )
  watched.set(element, tell)
  watcher.observe(element)
  return () => {
    watched.delete(element)
    watcher?.unobserve(element)
  }
}
