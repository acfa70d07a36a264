import { useEffect } from 'react'
import { usePlanPage } from './plan-page-context.ts'
import { bringIntoView } from './show-part.ts'

/** Brings a place of the plan into view and puts the focus into its first field, after the rows on the way have opened. */
export function JumpWatch() {
  const jump = usePlanPage((page) => page.jump)
  useEffect(() => {
    if (!jump) return
    const frame = requestAnimationFrame(() => goTo(jump.to))
    return () => cancelAnimationFrame(frame)
  }, [jump])
  return null
}

function goTo(to: string): void {
  const place = elementAt(to)
  if (!place) return
  bringIntoView(place, place.id === '' ? 'center' : 'start')
  place
    .querySelector<HTMLElement>('input, select, textarea, button:not([disabled])')
    ?.focus({ preventScroll: true })
}

/** The part of the page, the field of that name, or the nearest part of the plan that holds the path. */
function elementAt(to: string): HTMLElement | null {
  const part = document.getElementById(to)
  if (part) return part
  const field = document.querySelector<HTMLElement>(`[data-field="${CSS.escape(to)}"]`)
  if (field) return field
  for (let path = to; path !== ''; path = path.slice(0, path.lastIndexOf('/'))) {
    const found = document.querySelectorAll<HTMLElement>(`[data-path="${CSS.escape(path)}"]`)
    const last = [...found].at(-1)
    if (last) return last
  }
  return null
}
