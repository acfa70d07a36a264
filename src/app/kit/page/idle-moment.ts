const mostMilliseconds = 2000
const withoutTold = 200

/**
 * The next moment in which the page has nothing to draw and no press to answer, or two seconds from now where there is none. A
 * browser that does not tell is given a moment.
 */
export function idleMoment(): Promise<void> {
  // Not every browser has it, whatever its type says.
  const whenIdle: typeof window.requestIdleCallback | undefined = window.requestIdleCallback
  return new Promise((go) => {
    if (whenIdle) whenIdle(() => go(), { timeout: mostMilliseconds })
    else setTimeout(go, withoutTold)
  })
}
