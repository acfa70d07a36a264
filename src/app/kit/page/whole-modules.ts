/**
 * How wide, in CSS pixels, a code of so many modules is drawn in the room it has: each module as many whole pixels of the
 * screen as fit, since uneven ones are what a camera misreads first. A room too small for one pixel each is filled as it is.
 */
export function codeWidth(roomPixels: number, modules: number, pixelRatio: number): number {
  const perModule = Math.floor((roomPixels * pixelRatio) / modules)
  return perModule < 1 ? roomPixels : (perModule * modules) / pixelRatio
}
