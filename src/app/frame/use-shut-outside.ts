import { type RefObject, useEffect, useEffectEvent, useRef } from 'react'

/**
 * While something is open: Escape shuts it and gives focus back to the press that opened it; so does a press elsewhere, or Tab out of it. Focus that
 * the page itself moves, as on arriving, shuts nothing.
 */
export function useShutOutside(open: boolean, shut: () => void): RefObject<HTMLElement | null> {
  const box = useRef<HTMLElement | null>(null)
  const onOutside = useEffectEvent((event: Event) => {
    if (event.target instanceof Node && !box.current?.contains(event.target)) shut()
  })
  const onKey = useEffectEvent((event: KeyboardEvent) => {
    if (event.key !== 'Escape') return
    shut()
    box.current?.querySelector<HTMLElement>('button[aria-expanded]')?.focus()
  })
  useEffect(() => {
    if (!open) return
    const leaving = (event: Event) => onOutside(event)
    const keyed = (event: KeyboardEvent) => onKey(event)
    const tabbed = (event: KeyboardEvent) => {
      if (event.key === 'Tab') onOutside(event)
    }
    document.addEventListener('pointerdown', leaving)
    document.addEventListener('keyup', tabbed)
    document.addEventListener('keydown', keyed)
    return () => {
      document.removeEventListener('pointerdown', leaving)
      document.removeEventListener('keyup', tabbed)
      document.removeEventListener('keydown', keyed)
    }
  }, [open])
  return box
}
