/** Lying on the bench a phone has no room for the page's head: what is done now begins with the doughs' clocks. */
const lying = '(orientation: landscape) and (height < 30rem)'

/** Brings what is done now into view. */
export function toFront(): void {
  const rail = document.querySelector('[data-bench-rail]')
  if (rail && matchMedia(lying).matches) rail.scrollIntoView()
  else window.scrollTo(0, 0)
}
