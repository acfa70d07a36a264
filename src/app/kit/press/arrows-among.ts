const steps: Readonly<Record<string, number>> = {
  ArrowLeft: -1,
  ArrowUp: -1,
  ArrowRight: 1,
  ArrowDown: 1,
}

/**
 * A ref for presses that stand in a row: the arrow keys go from one to the next and stop at the ends. Each stays a stop of the tab
 * key too, so that a switch which steps by that key alone reaches all of them.
 */
export function arrowsAmong(root: HTMLElement | null): (() => void) | undefined {
  if (!root) return
  const key = (event: KeyboardEvent) => {
    const by = steps[event.key]
    if (by === undefined || event.altKey || event.ctrlKey || event.metaKey) return
    const presses = [...root.querySelectorAll<HTMLElement>('button:enabled')]
    const at = presses.findIndex((each) => each.matches(':focus'))
    if (at < 0) return
    event.preventDefault()
    presses[at + by]?.focus()
  }
  root.addEventListener('keydown', key)
  return () => root.removeEventListener('keydown', key)
}
