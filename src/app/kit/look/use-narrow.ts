import { useSyncExternalStore } from 'react'

const wide = '(width >= 62rem)'

/** As it was last seen on screen: a sheet of paper is narrow, and a page that folds itself for it loses what is printed from it. */
let narrowOnScreen = false

/** Whether the page has one column: what stands open on a desk is then folded, and the foot of the page stays in reach. */
export function useNarrow(): boolean {
  return useSyncExternalStore(watch, narrowNow)
}

function narrowNow(): boolean {
  if (!window.matchMedia('print').matches) narrowOnScreen = !window.matchMedia(wide).matches
  return narrowOnScreen
}

function watch(told: () => void): () => void {
  const query = window.matchMedia(wide)
  query.addEventListener('change', told)
  return () => query.removeEventListener('change', told)
}
