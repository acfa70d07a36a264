import { useEffect } from 'react'
import { type PlanPartId, partOf } from './part-names.ts'
import { usePlanActions, usePlanPage } from './plan-page-context.ts'
import { bringIntoView } from './show-part.ts'

/** Brings a place of the plan into view and puts the focus into its first field, after the rows on the way have opened. */
export function JumpWatch() {
  const jump = usePlanPage((page) => page.jump)
  const { turn } = usePlanActions()
  useEffect(() => {
    if (!jump) return
    const frame = requestAnimationFrame(() => goTo(jump.to, (part) => turn(part, true)))
    return () => cancelAnimationFrame(frame)
  }, [jump, turn])
  return null
}

function goTo(to: string, open: (part: PlanPartId) => void, tries = 1): void {
  const place = elementAt(to)
  if (!place) return
  // A field may stand in a part of the page that its name does not tell.
  const hidden = place.closest<HTMLElement>('[hidden]')?.closest<HTMLElement>('[data-plan-part]')
  const part = partOf(hidden?.dataset.planPart ?? '')
  if (part !== null && tries > 0) {
    open(part)
    requestAnimationFrame(() => goTo(to, open, tries - 1))
    return
  }
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
  const around = partOf(to)
  return around === null
    ? null
    : document.querySelector<HTMLElement>(`[data-plan-part="${around}"]`)
}
