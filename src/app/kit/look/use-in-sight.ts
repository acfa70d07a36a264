import { type RefObject, useEffect, useState } from 'react'

const told = new WeakMap<Element, (inSight: boolean) => void>()
let watcher: IntersectionObserver | null = null

/** Whether an element stands in the window, scrolled boxes around it minded; it counts as seen until that is known. */
export function useInSight(ref: RefObject<Element | null>): boolean {
  const [inSight, setInSight] = useState(true)
  useEffect(() => {
    const element = ref.current
    if (!element) return
    watcher ??= new IntersectionObserver((seen) => {
      for (const { target, isIntersecting } of seen) told.get(target)?.(isIntersecting)
    })
    const watching = watcher
    told.set(element, setInSight)
    watching.observe(element)
    return () => watching.unobserve(element)
  }, [ref])
  return inSight
}
