import { normalTails } from '@/core/statistics/distributions/normal.ts'
import { type Answer, refuse } from '@/core/statistics/reason.ts'
import { type RankedBlocks, rankSumsOf } from './rank-blocks.ts'
import { rankScoreDistribution } from './rank-score-distribution.ts'

export type PageDirection = 'rising' | 'falling' | 'two-sided'

/** `exact` counts all deals of the ranks; with ties those of the tied ranks; `normal` is used where counting is too long. */
export type PageMethod = 'exact' | 'exact-given-ties' | 'normal' | 'normal-given-ties'

export type Page = {
  l: number
  mean: number
  variance: number
  p: number
  direction: PageDirection
  method: PageMethod
}

const mostLevels = 8
const mostSteps = 1e7

/**
 * Do scores rise along ordered levels? Page's L = Σ i·(rank sum of the i-th level), always for rising levels (Page 1963,
 * J Am Stat Assoc 58:216; from memory). `direction` changes p alone: rising P(L ≥ l), falling P(L ≤ l), two-sided twice the
 * smaller, at most 1 (L is symmetric around its mean, ties included).
 *
 * p is exact for up to 8 levels as long as counting takes fewer than 10⁷ steps, with ties exact given the ties; else from
 * the normal with the mean and the tie-conditional variance of L. The method is named.
 * Refuses `one-level`, `no-complete-block`, `all-equal` when every block ties all levels.
 *
 * @example page(rankBlocks([[1, 2, 3], [1, 2, 3]]), 'rising') // {"ok": true, "l": 28, "p": 0.0278} (by hand: 1 deal of 36)
 */
export function page(ranked: RankedBlocks, direction: PageDirection): Answer<Page> {
  const { blocks, levelCount: k } = ranked
  const n = blocks.length
  if (k < 2) return refuse('one-level')
  if (n === 0) return refuse('no-complete-block')
  const tied = blocks.some(({ tieTerm }) => tieTerm > 0)
  const l = rankSumsOf(ranked).reduce((sum, total, i) => sum + total * (i + 1), 0)
  const mean = (n * k * (k + 1) ** 2) / 4
  const positions = (k * (k * k - 1)) / 12
  const variance = blocks.reduce(
    (sum, { tieTerm }) => sum + (positions * (k ** 3 - k - tieTerm)) / 12 / (k - 1),
    0,
  )
  if (variance === 0) return refuse('all-equal')
  const width = (k * (k * k - 1)) / 3
  const exact = k <= mostLevels && (n * n * width * width) / 4 < mostSteps
  const tails = exact ? exactTails(ranked, l) : normalTails((l - mean) / Math.sqrt(variance))
  const p =
    direction === 'rising'
      ? tails.upper
      : direction === 'falling'
        ? tails.lower
        : Math.min(1, 2 * Math.min(tails.lower, tails.upper))
  const method = exact
    ? tied
      ? 'exact-given-ties'
      : 'exact'
    : tied
      ? 'normal-given-ties'
      : 'normal'
  return { ok: true, l, mean, variance, p, direction, method }
}

/**
 * P(L ≤ l) and P(L ≥ l), both counting l itself: the blocks' own distributions are convolved in two halves, whose sum need not
 * be spread out to be cut at l.
 */
function exactTails({ blocks }: RankedBlocks, l: number): { lower: number; upper: number } {
  // Sums of doubled ranks; where no block has ties every other one cannot be, and is not carried along.
  const step = blocks.some(({ tieTerm }) => tieTerm > 0) ? 1 : 2
  const middle = blocks.length >> 1
  const one = sumOfBlocks(blocks.slice(0, middle), step)
  const other = sumOfBlocks(blocks.slice(middle), step)
  const cut = Math.round((2 * l - one.offset - other.offset) / step)
  const upTo = runningTotals(other.chances)
  const from = runningTotals(other.chances.toReversed()).reverse()
  const last = from.length - 1
  let lower = 0
  let upper = 0
  for (const [s, chance] of one.chances.entries()) {
    const rest = cut - s
    if (rest >= 0) lower += chance * (upTo[Math.min(rest, last)] as number)
    if (rest <= last) upper += chance * (from[Math.max(rest, 0)] as number)
  }
  return { lower: Math.min(1, lower), upper: Math.min(1, upper) }
}

/** Chances of the blocks' summed scores: entry s is the chance of offset + step·s. */
function sumOfBlocks(
  blocks: RankedBlocks['blocks'],
  step: number,
): { chances: Float64Array; offset: number } {
  let chances = Float64Array.of(1)
  let offset = 0
  for (const { ranks } of blocks) {
    const one = rankScoreDistribution(ranks.map((rank) => 2 * rank))
    const first = one.findIndex((chance) => chance > 0)
    chances = convolve(
      chances,
      one.subarray(first).filter((_, s) => s % step === 0),
    )
    offset += first
  }
  return { chances, offset }
}

function runningTotals(parts: Float64Array): Float64Array {
  let total = 0
  return parts.map((part) => {
    total += part
    return total
  })
}

function convolve(p: Float64Array, q: Float64Array): Float64Array<ArrayBuffer> {
  const [long, short] = [p.length, q.length]
  const out = new Float64Array(long + short - 1)
  for (let i = 0; i < short; i += 1) {
    const chance = q[i] as number
    if (chance === 0) continue
    for (let j = 0; j < long; j += 1) {
      out[i + j] = (out[i + j] as number) + chance * (p[j] as number)
    }
  }
  return out
}
