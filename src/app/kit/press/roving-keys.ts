import type { KeyboardEvent } from 'react'

const steps: Record<string, (index: number, count: number) => number> = {
  ArrowRight: (index, count) => (index + 1) % count,
  ArrowLeft: (index, count) => (index - 1 + count) % count,
  Home: () => 0,
  End: (_, count) => count - 1,
}

/** Arrow keys, Home and End among the buttons inside an element: moves focus and tells which was reached. */
export function rovingKeys(onReach: (index: number) => void) {
  return (event: KeyboardEvent<HTMLElement>) => {
    const step = steps[event.key]
    if (!step) return
    const buttons = Array.from(event.currentTarget.querySelectorAll('button'))
    const index = buttons.findIndex((button) => button.matches(':focus'))
    if (index < 0) return
    event.preventDefault()
    const reached = step(index, buttons.length)
    buttons[reached]?.focus()
    onReach(reached)
  }
}
