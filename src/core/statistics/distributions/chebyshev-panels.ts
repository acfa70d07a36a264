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

const angles = Float64Array.from(
  { length: degree + 1 },
  (_, i) => ((i + 0.5) * Math.PI) / (degree + 1),
)

function coefficientsOn(exact: (x: number) => number, panel: number): Float64Array {
  const values = angles.map((angle) => exact(panel + 0.5 * (1 + Math.cos(angle))))
  return Float64Array.from({ length: degree + 1 }, (_, j) => {
    const sum = values.reduce(
      (total, value, i) => total + value * Math.cos(j * (angles[i] as number)),
      0,
    )
    return ((j === 0 ? 1 : 2) * sum) / (degree + 1)
  })
}
