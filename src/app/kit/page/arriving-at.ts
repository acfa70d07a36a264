/** How to go to a page and arrive at one of its parts in place of its top; kept with the address, so a reload does too. */
export const arrivingAt = (part: string) => ({ state: { part } })

/** Whether the way to this page led to that part of it. */
export function arrivesAt(part: string): boolean {
  const state: unknown = window.history.state
  return typeof state === 'object' && state !== null && 'part' in state && state.part === part
}
