import { isVeiled, overlaps, topDialog, veiledMilliseconds, veilPlace } from './veil.ts'

/** What can be pressed; a field in which words are typed is none. */
const pressed = 'button, a[href], summary, label, [role="button"]'
/** What a second tap could set going. */
const pressable = `${pressed}, input, select`

interface Press {
  control: HTMLElement
  means: string
  place: DOMRect
  /** Where the finger was; null for a key. */
  point: { x: number; y: number } | null
  /** Until when its place may still change for it: a moment after the press, or after its work was done. */
  endsAt: number
  /** What stood in its place when that was last veiled. */
  veiledFor: string[] | null
}

/**
 * A ref for what holds the places where presses are logged. After a press whose place comes to mean something else (another
 * control moved there, its words or its `data-means` changed, a dialog opened over it) that place takes no press for a moment:
 * neither the second tap of the same finger nor a key held down. So too where a `data-means` changes by itself, as when
 * another tab or the clock moves the work on. Everything elsewhere can be pressed at once.
 */
export function guardPresses(root: HTMLElement | null): (() => void) | undefined {
  if (!root) return
  const watched = new Set<Press>()
  let gesture: { control: HTMLElement | null; means: string; veiled: boolean } | null = null

  /** Lets go of the presses whose moment is over; work that still goes on gives a press another. */
  const goOn = () => {
    const now = performance.now()
    for (const press of watched) {
      const { control } = press
      if (control.isConnected && control.ariaBusy === 'true')
        press.endsAt = now + veiledMilliseconds
      if (now > press.endsAt) watched.delete(press)
    }
    if (watched.size === 0) changes.disconnect()
    return watched.size > 0
  }
  const look = () => {
    if (!goOn()) return
    for (const press of watched) if (!stands(press)) giveWay(press)
  }
  const changes = new MutationObserver((records) => {
    if (records.some(({ target, addedNodes }) => !isVeil(target) && ![...addedNodes].some(isVeil)))
      look()
  })
  const meanings = new MutationObserver((records) => {
    // What a press of this hand changes elsewhere is what it was pressed for.
    if (goOn()) return
    for (const { target } of records)
      if (target instanceof HTMLElement) veilPlace(target.getBoundingClientRect())
  })

  const down = ({ target }: PointerEvent) => {
    const control = controlOf(target)
    const means = control ? meaningOf(control) : ''
    gesture = { control, means, veiled: target instanceof Node && isVeil(target) }
  }
  const click = (event: MouseEvent) => {
    const control = controlOf(event.target)
    if (!control || !event.isTrusted) return
    const byFinger = event.detail > 0
    if (byFinger ? isTooLate(gesture, control) : isVeiled(control.getBoundingClientRect())) {
      event.preventDefault()
      event.stopImmediatePropagation()
      veilPlace(control.getBoundingClientRect())
      return
    }
    watched.add({
      control,
      means: meaningOf(control),
      place: control.getBoundingClientRect(),
      point: byFinger ? { x: event.clientX, y: event.clientY } : null,
      endsAt: performance.now() + veiledMilliseconds,
      veiledFor: null,
    })
    changes.observe(document.body, {
      childList: true,
      subtree: true,
      characterData: true,
      attributeFilter: ['aria-busy', 'aria-label', 'data-means', 'open'],
    })
  }
  const key = (event: KeyboardEvent) => {
    if (event.repeat && event.key === 'Enter' && controlOf(event.target)) event.preventDefault()
  }
  const capture = { capture: true } as const
  meanings.observe(root, { subtree: true, attributeFilter: ['data-means'] })
  document.addEventListener('pointerdown', down, capture)
  document.addEventListener('click', click, capture)
  document.addEventListener('keydown', key, capture)
  document.addEventListener('scroll', look, capture)
  return () => {
    meanings.disconnect()
    changes.disconnect()
    document.removeEventListener('pointerdown', down, capture)
    document.removeEventListener('click', click, capture)
    document.removeEventListener('keydown', key, capture)
    document.removeEventListener('scroll', look, capture)
  }
}

const isVeil = (node: Node) => node instanceof HTMLElement && node.dataset.veil !== undefined

const controlOf = (target: EventTarget | null) =>
  target instanceof Element
    ? (target.closest<HTMLElement>('label') ?? target.closest<HTMLElement>(pressed))
    : null

const meaningOf = (control: HTMLElement) =>
  control.dataset.means ?? control.getAttribute('aria-label') ?? control.textContent ?? ''

/** Whether a finger came down on something else than what it would now set going. */
function isTooLate(
  gesture: { control: HTMLElement | null; means: string; veiled: boolean } | null,
  control: HTMLElement,
): boolean {
  if (!gesture) return false
  const { veiled, control: before, means } = gesture
  return veiled || (before !== null && before === control && means !== meaningOf(control))
}

/** Whether what was pressed still is there and means what it meant. */
function stands({ control, means, point }: Press): boolean {
  if (!control.isConnected || meaningOf(control) !== means) return false
  const dialog = topDialog()
  if (dialog && !dialog.contains(control)) return false
  const { left, right, top, bottom } = control.getBoundingClientRect()
  return !point || (point.x >= left && point.x <= right && point.y >= top && point.y <= bottom)
}

/** Veils the place of a press for whatever can be pressed there now, anew when that changes within the moment. */
function giveWay(press: Press): void {
  press.endsAt = Math.min(press.endsAt, performance.now() + veiledMilliseconds)
  const within: ParentNode = topDialog() ?? document
  const there = [...within.querySelectorAll<HTMLElement>(pressable)]
    .filter((control) => overlaps(control.getBoundingClientRect(), press.place))
    .map(meaningOf)
  if (there.length === 0 || there.join('\n') === press.veiledFor?.join('\n')) return
  press.veiledFor = there
  veilPlace(press.place)
}
