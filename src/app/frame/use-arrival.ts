import { useEffect, useRef } from 'react'

const patienceMilliseconds = 10_000

/**
 * After each navigation, puts focus on the new page's heading and the page at its top, as a browser would for a new
 * document; waits for a page that is still loading. The first page of a visit is left alone.
 */
export function useArrival(location: string): void {
  const first = useRef<boolean>(true)
  // biome-ignore lint/correctness/useExhaustiveDependencies: the address is what makes it an arrival
  useEffect(() => {
    if (first.current) {
      first.current = false
      return
    }
    const arrive = () => {
      const heading = document.querySelector<HTMLElement>('[data-page-heading]')
      if (!heading) return false
      window.scrollTo(0, 0)
      heading.focus({ preventScroll: true })
      return true
    }
    if (arrive()) return
    const watcher = new MutationObserver(() => {
      if (arrive()) watcher.disconnect()
    })
    watcher.observe(document.body, { childList: true, subtree: true })
    const timer = setTimeout(() => watcher.disconnect(), patienceMilliseconds)
    return () => {
      watcher.disconnect()
      clearTimeout(timer)
    }
  }, [location])
}
