import betainc from '@stdlib/math-base-special-betainc'
import gammaln from '@stdlib/math-base-special-gammaln'
import { fTails } from './f.ts'
import type { Tails } from './tails.ts'

/**
 * Both tails of the noncentral F: the Poisson mixture Σ pois(j; λ/2)·I_y(df1/2 + j, df2/2), y = df1·x/(df1·x + df2)
 * (Johnson, Kotz & Balakrishnan 1995, vol. 2, chapter 30; from memory). Both tails are summed as such; the incomplete betas
 * come from the recurrence in their first parameter, run in the direction in which it only adds.
 */
export function noncentralFTails(
  x: number,
  df1: number,
  df2: number,
  noncentrality: number,
): Tails {
  if (x <= 0) return { lower: 0, upper: 1 }
  if (noncentrality === 0) return fTails(x, df1, df2)
  const half = noncentrality / 2
  const spread = 12 * Math.sqrt(half + 4) + 20
  const first = Math.max(0, Math.floor(half - spread))
  const last = Math.ceil(half + spread)
  const weights = Float64Array.from({ length: last - first + 1 }, (_, i) =>
    Math.exp((first + i) * Math.log(half) - half - gammaln(first + i + 1)),
  )
  const mixture = { x, df1, df2, first, weights }
  const lower = lowerMixture(mixture)
  const upper = upperMixture(mixture)
  return lower < upper ? { lower, upper: 1 - lower } : { lower: 1 - upper, upper }
}

type Mixture = { x: number; df1: number; df2: number; first: number; weights: Float64Array }

/** I_y(a, b) grows as a falls: from the last term down, adding y^a(1−y)^b/(a·B(a, b)). */
function lowerMixture(mixture: Mixture): number {
  const { weights } = mixture
  let beta = betaAt(mixture, weights.length - 1, false)
  let sum = 0
  for (let i = weights.length - 1; i >= 0; i -= 1) {
    sum += (weights[i] as number) * beta
    if (i > 0) beta += differenceAt(mixture, i - 1)
  }
  return sum
}

function upperMixture(mixture: Mixture): number {
  const { weights } = mixture
  let beta = betaAt(mixture, 0, true)
  let sum = 0
  for (let i = 0; i < weights.length; i += 1) {
    sum += (weights[i] as number) * beta
    beta += differenceAt(mixture, i)
  }
  return sum
}

function betaAt({ x, df1, df2, first }: Mixture, i: number, upper: boolean): number {
  const a = df1 / 2 + first + i
  const scaled = df1 * x
  return scaled <= df2
    ? betainc(scaled / (scaled + df2), a, df2 / 2, true, upper)
    : betainc(df2 / (scaled + df2), df2 / 2, a, true, !upper)
}

/** I_y(a, b) − I_y(a + 1, b) = y^a·(1 − y)^b/(a·B(a, b)) at the i-th term. */
function differenceAt({ x, df1, df2, first }: Mixture, i: number): number {
  const a = df1 / 2 + first + i
  const b = df2 / 2
  const ratio = (df1 * x) / df2
  const logY = -Math.log1p(1 / ratio)
  const logRest = -Math.log1p(ratio)
  return Math.exp(a * logY + b * logRest + gammaln(a + b) - gammaln(a + 1) - gammaln(b))
}
