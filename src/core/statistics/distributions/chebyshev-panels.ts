const degree = 13

type Panel = { start: number; width: number; coefficients: Float64Array }

/**
 * A smooth function on [0, farthest], evaluated fast after the first visit: it is replaced by Chebyshev polynomials of degree
 * 13 on panels, each built when it is first needed (14 calls of the function). Panels are half as wide as their beginning is
 * far, at least ½: the logarithm of a tail, which is what they are for, bends ever less on its way out.
 * The interpolant and Clenshaw's recurrence are the textbook's (Trefethen 2013, Approximation Theory and Approximation
 * Practice, chapters 3 and 19; from memory).
 */
export function chebyshevPanels(
  exact: (x: number) => number,
  farthest: number,
): (x: number) => number {
  const panels: Panel[] = []
  return (x) => {
    const number = x < 1 ? Math.floor(2 * x) : 2 + Math.floor(Math.log(x) / Math.log(1.5))
    const known = panels[number]
    const panel = known ?? panelOf(exact, number, farthest)
    if (!known) panels[number] = panel
    const { start, width, coefficients } = panel
    const t = (2 * (x - start)) / width - 1
    let next = 0
    let afterNext = 0
    for (let j = degree; j > 0; j -= 1) {
      const current = 2 * t * next - afterNext + (coefficients[j] as number)
      afterNext = next
      next = current
    }
    return t * next - afterNext + (coefficients[0] as number)
  }
}

const count = degree + 1
const nodes = Float64Array.from({ length: count }, (_, i) => cosine(1, i))
/** What the value at the i-th node adds to the j-th coefficient, at place j·count + i. */
const shares = Float64Array.from({ length: count * count }, (_, at) => {
  const j = Math.floor(at / count)
  return ((j === 0 ? 1 : 2) * cosine(j, at % count)) / count
})

function cosine(j: number, i: number): number {
  return Math.cos((j * (i + 0.5) * Math.PI) / count)
}

function panelOf(exact: (x: number) => number, number: number, farthest: number): Panel {
  const start = number < 2 ? number / 2 : 1.5 ** (number - 2)
  const width = Math.min(Math.max(0.5, 0.5 * start), farthest - start)
  const coefficients = new Float64Array(count)
  for (let i = 0; i < count; i += 1) {
    const value = exact(start + 0.5 * width * (1 + (nodes[i] as number)))
    for (let j = 0; j < count; j += 1)
      coefficients[j] = (coefficients[j] as number) + value * (shares[j * count + i] as number)
  }
  return { start, width, coefficients }
}
