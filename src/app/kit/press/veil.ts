import styles from './veil.module.css'

/** How long a place that came to mean something else takes no press: longer than a finger bounces or a habit taps twice. */
export const veiledMilliseconds = 700

interface Veil {
  place: DOMRect
  element: HTMLElement
}

const veils = new Set<Veil>()

/** The dialog that is over everything; what lies under it can be neither pressed nor veiled. */
export const topDialog = (): HTMLDialogElement | null =>
  [...document.querySelectorAll<HTMLDialogElement>('dialog[open]')].at(-1) ?? null

/** Covers a place of the window for a moment: it takes no press, and looks it. Covered again, its moment begins anew. */
export function veilPlace(place: DOMRect): void {
  for (const veil of veils) if (isSame(veil.place, place)) lift(veil)
  const element = document.createElement('div')
  element.className = styles.veil ?? ''
  element.dataset.veil = ''
  element.setAttribute('aria-hidden', 'true')
  // Whole pixels: nobody reads a weight out of a fraction of one.
  const [x, y] = [Math.floor(place.x), Math.floor(place.y)]
  const [width, height] = [Math.ceil(place.right) - x, Math.ceil(place.bottom) - y]
  element.style.cssText = `left:${x}px;top:${y}px;width:${width}px;height:${height}px`
  const host = topDialog() ?? document.body
  host.append(element)
  const veil = { place, element }
  veils.add(veil)
  setTimeout(() => lift(veil), veiledMilliseconds)
}

/** Whether any of a place is under a veil. */
export const isVeiled = (place: DOMRect): boolean =>
  [...veils].some((veil) => overlaps(veil.place, place))

/** Whether two places share more than their edges. */
export function overlaps(one: DOMRect, other: DOMRect): boolean {
  const edge = 2
  return (
    Math.min(one.right, other.right) - Math.max(one.left, other.left) > edge &&
    Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) > edge
  )
}

const isSame = (one: DOMRect, other: DOMRect) =>
  one.x === other.x && one.y === other.y && one.width === other.width && one.height === other.height

function lift(veil: Veil): void {
  veil.element.remove()
  veils.delete(veil)
}
