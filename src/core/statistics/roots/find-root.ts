const epsilon = 2 ** -52

/**
 * Where a continuous function of one unknown crosses zero between two brackets, by Brent's method
 * (Brent 1973, Algorithms for Minimization without Derivatives, chapter 4; from memory).
 *
 * The signs at both brackets must differ; a bracket that does not is a programmer's mistake and throws.
 * Stops when the bracket is as narrow as `tolerance` relative to the root, or as double precision allows.
 */
export function findRoot(
  valueAt: (x: number) => number,
  low: number,
  high: number,
  tolerance = 4 * epsilon,
): number {
  let [a, b] = [low, high]
  let [fa, fb] = [valueAt(a), valueAt(b)]
  if (fa === 0) return a
  if (fb === 0) return b
  if (!(fa * fb < 0)) throw new RangeError(`no sign change between ${low} and ${high}`)
  let [c, fc] = [a, fa]
  let step = b - a
  let before = step
  for (let round = 0; round < 200; round += 1) {
    if (fb * fc > 0) {
      ;[c, fc] = [a, fa]
      step = b - a
      before = step
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      ;[a, b, c] = [b, c, b]
      ;[fa, fb, fc] = [fb, fc, fb]
    }
    const narrow = 2 * epsilon * Math.abs(b) + 0.5 * tolerance * Math.abs(b) + 1e-300
    const half = 0.5 * (c - b)
    if (fb === 0 || Math.abs(half) <= narrow) return b
    const proposed = interpolate(a, b, c, fa, fb, fc)
    const limit = Math.min(1.5 * Math.abs(half) - 0.5 * narrow, 0.5 * Math.abs(before))
    const usable =
      Math.abs(before) >= narrow &&
      Math.abs(fa) > Math.abs(fb) &&
      proposed * half > 0 &&
      Math.abs(proposed) < limit
    before = usable ? step : half
    step = usable ? proposed : half
    ;[a, fa] = [b, fb]
    b += Math.abs(step) > narrow ? step : Math.sign(half) * narrow
    fb = valueAt(b)
  }
  return b
}

/** Step from b to where the secant, or the inverse quadratic through three points, crosses zero. */
function interpolate(a: number, b: number, c: number, fa: number, fb: number, fc: number): number {
  const s = fb / fa
  if (a === c) return ((c - b) * s) / (s - 1)
  const q = fa / fc
  const r = fb / fc
  const numerator = s * ((c - b) * q * (q - r) - (b - a) * (r - 1))
  return -numerator / ((q - 1) * (r - 1) * (s - 1))
}
