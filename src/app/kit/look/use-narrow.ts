import { useSyncExternalStore } from 'react'

const wide = '(width >= 62rem)'

/** Whether the page has one column: what stands open on a desk is then folded, and the foot of the page stays in reach. */
export function useNarrow(): boolean {
  return useSyncExternalStore(watch, () => !window.matchMedia(wide).matches)
}

function watch(told: () => void): () => void {
  const query = window.matchMedia(wide)
  query.addEventListener('change', told)
  return () => query.removeEventListener('change', told)
}
