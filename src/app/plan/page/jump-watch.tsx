import { useEffect } from 'react'
import { arrivesAt } from '@/app/kit/page/arriving-at.ts'
import { type PlanPartId, partOf } from './part-names.ts'
import { usePlanActions, usePlanPage } from './plan-page-context.ts'

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

/** Brings a part of the page to the top of what scrolls around it. */
export function showPart(id: string): void {
  const part = document.getElementById(id)
  if (part) bringIntoView(part, 'start')
}

/**
 * Brings an element into view, and there again in the frames that follow: parts that rested out of sight take their true
 * height only as they come near.
 */
export function bringIntoView(element: Element, block: 'start' | 'center', frames = 3): void {
  element.scrollIntoView({ block })
  if (frames > 0) requestAnimationFrame(() => bringIntoView(element, block, frames - 1))
}

/** Brings a part into view when the way to this page led to it, as soon as what it shows is there. */
export function useArrivalHere(part: string, isThere: boolean): void {
  const jumpTo = usePlanPage((page) => page.jumpTo)
  useEffect(() => {
    if (isThere && arrivesAt(part)) jumpTo(part)
  }, [part, isThere, jumpTo])
}
