import gammaln from '@stdlib/math-base-special-gammaln'

/** Nodes of the estimated standard deviation around its true one, with how much each weighs. */
type ScaleNodes = { step: number; first: number; scales: Float64Array; weights: Float64Array }

const cache = new Map<string, ScaleNodes>()
/** Terms this far below the sum end it. */
export const negligible = 1e-15

/**
 * Average of something over the sampling distribution of an estimated standard deviation s with true value 1, that is
 * over s = √(χ²/df): the step from a statistic with known spread to the one with estimated spread.
 *
 * Trapezoid rule in v = ln s, where the weight is 2·(df/2)^(df/2)/Γ(df/2)·exp(df·v − df·e^{2v}/2). Both ends decay and the
 * integrand is analytic, so the error falls off exponentially with the step (Trefethen & Weideman 2014, SIAM Review 56:385;
 * from memory). The step is 0.15 or 0.55 standard deviations of ln s, whichever is less. All terms are positive when the
 * averaged thing is, so a small tail keeps its relative precision.
 *
 * `valueAt(s)` lies between 0 and 1, falls or rises with s, and the sum starts where the integrand is largest:
 * `curvature` is the κ in a decay like exp(−κ·s²), 0 if it does not decay. `sharpness` narrows the step for something that
 * changes fast with s: it is the square of that change in ln s, on the scale of a standard normal.
 */
export function averageOverScale(
  df: number,
  valueAt: (scale: number) => number,
  curvature = 0,
  sharpness = 0,
): number {
  if (df === Infinity) return valueAt(1)
  const nodes = scaleNodes(df, sharpness)
  const peak = -0.5 * Math.log(1 + (2 * curvature) / df)
  const last = nodes.scales.length - 1
  const from = Math.max(0, Math.min(last, Math.round((peak - nodes.first) / nodes.step)))
  const right = sumOutwards(nodes, valueAt, from, 1)
  const left = sumOutwards(nodes, valueAt, from - 1, -1)
  return nodes.step * (left + right)
}

function sumOutwards(
  nodes: ScaleNodes,
  valueAt: (scale: number) => number,
  from: number,
  direction: 1 | -1,
): number {
  let sum = 0
  let before = 0
  for (let i = from; i >= 0 && i < nodes.scales.length; i += direction) {
    const term = (nodes.weights[i] as number) * valueAt(nodes.scales[i] as number)
    sum += term
    if (term < negligible * sum && term <= before) break
    before = term
  }
  return sum
}

/** The step in ln s that the rule above takes. */
export function scaleStep(df: number, sharpness = 0): number {
  return Math.min(0.15, 0.55 / Math.sqrt(2 * df + sharpness))
}

/** The weight of a scale s = exp(v) in that average, which is its density times s. */
export function scaleWeight(df: number): (v: number) => number {
  const half = df / 2
  const logConstant = Math.LN2 + logRatioOfGamma(half)
  return (v) => Math.exp(logConstant + df * v - half * (Math.exp(2 * v) - 1))
}

function scaleNodes(df: number, sharpness: number): ScaleNodes {
  const key = `${df} ${sharpness}`
  const known = cache.get(key)
  if (known) return known
  const step = scaleStep(df, sharpness)
  const weightAt = scaleWeight(df)
  const leftEnd = -Math.max(16 / Math.sqrt(2 * df), 48 / df) - 3.5
  let rightEnd = 0
  while (weightAt(rightEnd) > 1e-26) rightEnd += step
  const count = Math.ceil((rightEnd - leftEnd) / step)
  const scales = Float64Array.from({ length: count }, (_, i) => Math.exp(leftEnd + i * step))
  const weights = scales.map((_, i) => weightAt(leftEnd + i * step))
  const nodes = { step, first: leftEnd, scales, weights }
  if (cache.size > 200) cache.clear()
  cache.set(key, nodes)
  return nodes
}

/** ln of a^a·e^{−a}/Γ(a); by Stirling's series once a is large, so that nothing cancels. */
function logRatioOfGamma(a: number): number {
  if (a < 30) return a * Math.log(a) - a - gammaln(a)
  const inverse = 1 / a
  const square = inverse * inverse
  const series = inverse * (1 / 12 - square * (1 / 360 - square * (1 / 1260 - square / 1680)))
  return 0.5 * Math.log(a / (2 * Math.PI)) - series
}
