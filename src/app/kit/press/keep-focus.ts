/** For a heading or list on which focus may land when the control that had it is gone: `<h2 {...landing}>`. */
export const landing = { tabIndex: -1, 'data-landing': '' } as const

/**
 * A ref for what holds all pages, whose controls come and go as they are pressed. When the one that has focus leaves the page, or
 * can no longer be pressed, focus would fall to the page's body; it lands on what just opened instead, else on the nearest
 * landing around the lost control; out of a dialog that is gone it goes back to what opened it. Nothing is scrolled.
 */
export function keepFocus(root: HTMLElement | null): (() => void) | undefined {
  if (!root) return
  /** What has focus, then all it stands in, up to the root; empty while focus is elsewhere of its own will. */
  let path: HTMLElement[] = []
  let opener: HTMLElement | undefined
  const entered = ({ target }: FocusEvent) => {
    const next = pathTo(target, root)
    if (inDialog(next) && !inDialog(path)) opener = path[0]
    path = next
  }
  const left = ({ target, relatedTarget }: FocusEvent) => {
    if (relatedTarget instanceof Node) {
      if (!root.contains(relatedTarget)) path = []
      return
    }
    // A control that is being taken away still looks like one that was left.
    queueMicrotask(() => {
      if (path[0] === target && !isLost(path[0]) && isNowhere(document.activeElement)) path = []
    })
  }
  const mend = (changes: readonly MutationRecord[]) => {
    const [had] = path
    if (!had || !isLost(had)) return
    const active = document.activeElement
    if (active !== had && !isNowhere(active)) return
    const back = inDialog(path) && opener && !isLost(opener) ? opener : null
    const next = back ?? opened(root, changes) ?? nearest(path)
    path = []
    next?.focus({ preventScroll: true })
  }
  const watcher = new MutationObserver(mend)
  watcher.observe(root, { childList: true, subtree: true, attributeFilter: ['disabled'] })
  root.addEventListener('focusin', entered)
  root.addEventListener('focusout', left)
  return () => {
    watcher.disconnect()
    root.removeEventListener('focusin', entered)
    root.removeEventListener('focusout', left)
  }
}

const landings = (within: HTMLElement) => [
  ...within.querySelectorAll<HTMLElement>('[data-landing]'),
]

const isLost = (element: HTMLElement) => !element.isConnected || element.matches(':disabled')

const isNowhere = (active: Element | null) => active === null || active === document.body

const inDialog = (path: readonly HTMLElement[]) =>
  path.some((element) => element instanceof HTMLDialogElement)

function pathTo(target: EventTarget | null, root: HTMLElement): HTMLElement[] {
  if (!(target instanceof HTMLElement)) return []
  const parent = target === root ? null : target.parentElement
  return [target, ...pathTo(parent, root)]
}

function opened(root: HTMLElement, changes: readonly MutationRecord[]): HTMLElement | undefined {
  const added = changes.flatMap(({ addedNodes }) => [...addedNodes])
  return landings(root).find((each) => added.some((node) => node.contains(each)))
}

function nearest(path: readonly HTMLElement[]): HTMLElement | undefined {
  for (const element of path) {
    const [found] = element.isConnected ? landings(element) : []
    if (found) return found
  }
  return undefined
}
