/**
 * Moves focus, and with it the page, to what has just come to the table: the next code after a seal, the set, the thanks. A
 * keyboard goes on from there, a screen reader says it, and a phone shows it from its top.
 */
export function arriveAt(element: HTMLElement | null): void {
  if (!element) return
  window.scrollTo(0, 0)
  element.focus({ preventScroll: true })
}
