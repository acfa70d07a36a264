let waiting: (() => void)[] = []
let timer: ReturnType<typeof setTimeout> | undefined

/** What a person can do next, and the ways a page is left: what waits is done first. */
const next = ['keydown', 'beforeinput', 'pointerdown', 'click', 'focusout', 'visibilitychange']
const leaving = ['pagehide', 'hashchange', 'popstate']
const early = { capture: true }

/** A page out of sight draws no frame (ms). */
const noFrameMilliseconds = 100

/** Does at once whatever waits for the frame of a key. */
export function doWaiting(): void {
  if (timer === undefined) return
  clearTimeout(timer)
  timer = undefined
  for (const kind of next) document.removeEventListener(kind, doWaiting, early)
  for (const kind of leaving) window.removeEventListener(kind, doWaiting, early)
  const works = waiting
  waiting = []
  for (const work of works) work()
}

/**
 * Does what follows from a key once the frame that shows the key is out, so that typing never waits for it; before that, where the
 * person does something else first or leaves the page.
 */
export function afterKey(work: () => void): void {
  waiting.push(work)
  if (timer !== undefined) return
  timer = setTimeout(doWaiting, noFrameMilliseconds)
  requestAnimationFrame(() => {
    if (waiting.length === 0) return
    // In the task after the frame.
    clearTimeout(timer)
    timer = setTimeout(doWaiting)
  })
  for (const kind of next) document.addEventListener(kind, doWaiting, early)
  for (const kind of leaving) window.addEventListener(kind, doWaiting, early)
}
