import { type RefObject, useEffect, useState } from 'react'

const none: ReadonlySet<number> = new Set()

/**
 * Which columns of a table of figures (by their place, the row heads left out) stand outside the box that it scrolls in;
 * none until that is known. `columnKeys` are theirs in one text: others are watched anew.
 */
export function useColumnsOutOfSight(
  boxRef: RefObject<HTMLElement | null>,
  live: boolean,
  columnKeys: string,
): ReadonlySet<number> {
  const [outside, setOutside] = useState(none)
  // biome-ignore lint/correctness/useExhaustiveDependencies: the heads are found anew when there are others
  useEffect(() => {
    const root = boxRef.current
    if (!live || !root) return
    const [, ...heads] = root.querySelectorAll('thead th')
    const watcher = new IntersectionObserver(
      (seen) => {
        setOutside((before) => {
          const now = new Set(before)
          for (const { target, isIntersecting } of seen) {
            if (isIntersecting) now.delete(heads.indexOf(target))
            else now.add(heads.indexOf(target))
          }
          return now
        })
      },
      { root },
    )
    for (const head of heads) watcher.observe(head)
    return () => {
      watcher.disconnect()
      setOutside(none)
    }
  }, [boxRef, live, columnKeys])
  return outside
}
