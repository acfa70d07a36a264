const degree = 13

/**
 * A smooth function on [0, ∞), evaluated fast after the first visit: it is replaced by Chebyshev polynomials of degree 13
 * on panels one wide, each built when it is first needed (14 calls of the function).
 * The interpolant and Clenshaw's recurrence are the textbook's (Trefethen 2013, Approximation Theory and Approximation
 * Practice, chapters 3 and 19; from memory).
 */
export function chebyshevPanels(exact: (x: number) => number): (x: number) => number {
  const panels: Float64Array[] = []
  return (x) => {
    const panel = Math.floor(x)
    let coefficients = panels[panel]
    if (!coefficients) {
      coefficients = coefficientsOn(exact, panel)
      panels[panel] = coefficients
    }
    const t = 2 * (x - panel) - 1
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

function coefficientsOn(exact: (x: number) => number, panel: number): Float64Array {
  const coefficients = new Float64Array(count)
  for (let i = 0; i < count; i += 1) {
    const value = exact(panel + 0.5 * (1 + (nodes[i] as number)))
    for (let j = 0; j < count; j += 1)
      coefficients[j] = (coefficients[j] as number) + value * (shares[j * count + i] as number)
  }
  return coefficients
}
