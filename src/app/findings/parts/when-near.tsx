import { type ReactNode, useEffect, useRef, useState } from 'react'

interface WhenNearProps {
  /** The room it will take, kept free until then. */
  heightPixels: number
  children: ReactNode
}

/** Makes its matter when it comes near the window, or before printing: what lies far down does not hold up what is seen first. */
export function WhenNear({ heightPixels, children }: WhenNearProps) {
  const ref = useRef<HTMLDivElement>(null)
  const [near, setNear] = useState(false)
  useEffect(() => {
    const place = ref.current
    if (near || !place) return
    const show = () => setNear(true)
    const watcher = new IntersectionObserver(
      (seen) => {
        if (seen.some(({ isIntersecting }) => isIntersecting)) show()
      },
      { rootMargin: '600px' },
    )
    watcher.observe(place)
    window.addEventListener('beforeprint', show)
    return () => {
      watcher.disconnect()
      window.removeEventListener('beforeprint', show)
    }
  }, [near])
  return (
    <div ref={ref} style={{ minBlockSize: heightPixels }}>
      {near ? children : null}
    </div>
  )
}
