/** Brings a part of the page to the top of what scrolls around it. */
export function showPart(id: string): void {
  document.getElementById(id)?.scrollIntoView({ block: 'start' })
}
