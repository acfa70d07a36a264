const lost = new Set<HTMLLinkElement>()
let watching = false
let coming: Promise<unknown> = Promise.resolve()

/** From the first late part on: style sheets that could not be fetched are remembered. */
export function watchStyles(): void {
  if (watching || typeof document === 'undefined') return
  watching = true
  const seen = ({ target }: Event) => {
    if (target instanceof HTMLLinkElement && target.rel === 'stylesheet') lost.add(target)
  }
  // The error of a link does not bubble.
  document.addEventListener('error', seen, true)
}

/**
 * Fetches those sheets anew; rejects where one does not come again. What brings a part’s files asks for each sheet once, and
 * would draw the part at the next try without its looks.
 */
export function stylesAnew(): Promise<unknown> {
  const links = [...lost]
  lost.clear()
  if (links.length > 0) coming = Promise.all(links.map(fetchAnew))
  return coming
}

function fetchAnew(link: HTMLLinkElement): Promise<unknown> {
  const next = link.cloneNode() as HTMLLinkElement
  const come = new Promise((done, fail) => {
    next.addEventListener('load', done)
    next.addEventListener('error', () => fail(new Error(`Unable to fetch ${next.href}`)))
  })
  link.replaceWith(next)
  return come
}
