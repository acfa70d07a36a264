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
