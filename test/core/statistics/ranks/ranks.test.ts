import { describe, expect, test } from 'vitest'
import { friedman } from '@/core/statistics/ranks/friedman.ts'
import { leastRankDifference } from '@/core/statistics/ranks/least-rank-difference.ts'
import { midranks } from '@/core/statistics/ranks/midranks.ts'
import { page } from '@/core/statistics/ranks/page.ts'
import { rankBlocks } from '@/core/statistics/ranks/rank-blocks.ts'
import { rankScoreDistribution } from '@/core/statistics/ranks/rank-score-distribution.ts'
import tests from '../../../outside/reference/tests.json'
import { relativeError } from '../../../outside/relative-error.ts'

/** Example data of the NAG library's g08aec (seen): 18 judges rank 3 treatments, one tie. */
const judges = transpose([
  [1, 2, 1, 1, 3, 2, 3, 1, 3, 3, 2, 2, 3, 2, 2.5, 3, 3, 2],
  [3, 3, 3, 2, 1, 3, 2, 3, 1, 1, 3, 3, 2, 3, 2.5, 2, 2, 3],
  [2, 1, 2, 3, 2, 1, 1, 2, 2, 2, 1, 1, 1, 1, 1, 1, 1, 1],
])

describe('Friedman', () => {
  test('round-first-base times, ties included, against R', () => {
    const expected = tests.friedman_rounding
    const found = friedman(rankBlocks(expected.data))
    if (!found.ok) throw new Error(found.reason)
    expect(relativeError(found.chiSquare, expected.result.statistic)).toBeLessThan(1e-12)
    expect(relativeError(found.p, expected.result.p)).toBeLessThan(1e-10)
    expect(relativeError(found.kendallW, expected.kendall_W)).toBeLessThan(1e-12)
    expect(found.rankSums).toEqual(expected.rank_sums)
  })

  test('g08aec: 8.5833 without its tie, 8.7042 with, p 0.0129; least difference 11.76 without', () => {
    const ranked = rankBlocks(judges)
    const found = friedman(ranked)
    if (!found.ok) throw new Error(found.reason)
    expect(found.rankSums).toEqual([39.5, 42.5, 26])
    expect(found.chiSquare).toBeCloseTo(8.7042, 4)
    expect(found.p).toBeCloseTo(0.0129, 4)
    // 8.5833 = 12/(18·3·4)·(39.5² + 42.5² + 26²) − 3·18·4; corrected by 1 − 6/(18·3·8) = 426/432.
    expect((found.chiSquare * 426) / 432).toBeCloseTo(8.5833, 4)
    // Without ties 1.96·√(18·3·4/6) = 11.76; the tie takes 6/2 off 216: 1.95996·√(213/6) = 11.678.
    expect(leastRankDifference(ranked)).toBeCloseTo(1.959964 * Math.sqrt(213 / 6), 5)
    const untied = rankBlocks(judges.filter((row) => !row.includes(2.5)))
    expect(leastRankDifference(untied)).toBeCloseTo(1.959964 * Math.sqrt((17 * 3 * 4) / 6), 5)
  })

  test('the two worked tables of Cochran’s Q, which Friedman with ties reproduces', () => {
    for (const { data, Q, p } of [tests.cochran_q.a, tests.cochran_q.b]) {
      const found = friedman(rankBlocks(data))
      if (!found.ok) throw new Error(found.reason)
      expect(relativeError(found.chiSquare, Q)).toBeLessThan(1e-12)
      expect(relativeError(found.p, p)).toBeLessThan(1e-10)
    }
  })

  test('tasters with an empty cell are left out and counted', () => {
    const found = friedman(
      rankBlocks([
        [1, 2, 3],
        [1, null, 2],
        [1, 3, 2],
      ]),
    )
    expect(found).toMatchObject({ ok: true, leftOut: 1, blocks: 2, rankSums: [2, 5, 5] })
  })

  test('nothing to rank has a reason', () => {
    expect(friedman(rankBlocks([[1, null]]))).toEqual({ ok: false, reason: 'no-complete-block' })
    expect(friedman(rankBlocks([[1], [2]]))).toEqual({ ok: false, reason: 'one-level' })
    expect(
      friedman(
        rankBlocks([
          [4, 4, 4],
          [5, 5, 5],
        ]),
      ),
    ).toEqual({ ok: false, reason: 'all-equal' })
  })
})

test('values equal to 10 decimals tie, others do not', () => {
  expect(midranks([0.3, 0.1 + 0.2, 0.2])).toEqual({ ranks: [2.5, 2.5, 1], tieTerm: 6 })
  expect(midranks([1, 1 + 2e-10, 1]).ranks).toEqual([1.5, 3, 1.5])
})

describe('Page', () => {
  test('cotton strength: L = 158, exact and normal p of R', () => {
    const expected = tests.page_cotton
    const ranked = rankBlocks(expected.data_rows_are_blocks)
    const found = page(ranked, 'rising')
    if (!found.ok) throw new Error(found.reason)
    expect([found.l, found.mean, found.variance]).toEqual([
      expected.L,
      expected.mean,
      expected.variance,
    ])
    expect(found.method).toBe('exact')
    expect(relativeError(found.p, expected.p_increasing_exact)).toBeLessThan(1e-12)
    expect(page(ranked, 'two-sided')).toMatchObject({ p: expect.closeTo(2 * found.p, 14) })
    const falling = page(ranked, 'falling')
    // P(L ≤ 158) = 1 − P(L ≥ 159).
    expect(falling).toMatchObject({ l: 158 })
    expect(falling.ok && falling.p).toBeGreaterThan(1 - found.p)
  })

  test('every exact critical value of the table: the least L with an upper tail within alpha', () => {
    for (const { k, n, L05, L01, L001 } of tests.page_cotton.exact_critical_values.table) {
      const tails = upperTails(k, n)
      for (const [critical, alpha] of [
        [L05, 0.05],
        [L01, 0.01],
        [L001, 0.001],
      ] as const) {
        const least = tails.findIndex((tail) => tail <= alpha)
        expect(least < 0 ? null : least).toBe(critical)
      }
    }
  })

  test('with ties p is exact given the ties: two blocks counted by hand', () => {
    // Ranks (1.5, 1.5, 3) and (1, 2, 3): L = 13.5 + 14 = 27.5, the largest possible. The first block's deals: the 3 goes to
    // the last place in one of three; the second's: one of six. P = 1/18.
    const found = page(
      rankBlocks([
        [4, 4, 6],
        [1, 2, 3],
      ]),
      'rising',
    )
    expect(found).toMatchObject({ ok: true, l: 27.5, method: 'exact-given-ties' })
    expect(found.ok && found.p).toBeCloseTo(1 / 18, 14)
  })

  test('the tie-conditional normal beyond counting', () => {
    const levels = 9
    const table = Array.from({ length: 6 }, (_, row) =>
      Array.from({ length: levels }, (_, i) => ((i * 5 + row * 3) % 11) + (i === 0 ? 1 : 0)),
    )
    const found = page(rankBlocks(table), 'two-sided')
    if (!found.ok) throw new Error(found.reason)
    expect(found.method).toMatch(/^normal/)
    // Without ties the variance is n·k²(k+1)²(k−1)/144 (facts.md 6.1).
    const free = page(rankBlocks([[1, 2, 3, 4, 5, 6, 7, 8, 9]]), 'rising')
    expect(free).toMatchObject({ variance: (81 * 100 * 8) / 144, method: 'normal' })
  })

  test('nothing to order has a reason', () => {
    expect(
      page(
        rankBlocks([
          [2, 2],
          [3, 3],
        ]),
        'rising',
      ),
    ).toEqual({ ok: false, reason: 'all-equal' })
    expect(page(rankBlocks([[null, 1]]), 'rising')).toEqual({
      ok: false,
      reason: 'no-complete-block',
    })
  })
})

function transpose(table: readonly (readonly number[])[]): number[][] {
  return (table[0] ?? []).map((_, i) => table.map((row) => row[i] as number))
}

/** P(L ≥ s) at every whole s for n untied blocks of k levels, from one block's distribution. */
function upperTails(k: number, n: number): number[] {
  const doubled = rankScoreDistribution(Array.from({ length: k }, (_, i) => 2 * (i + 1)))
  const one = Array.from({ length: (doubled.length + 1) / 2 }, (_, s) => doubled[2 * s] as number)
  let sum = [1]
  for (let block = 0; block < n; block += 1) {
    const next = new Array<number>(sum.length + one.length - 1).fill(0)
    for (const [i, a] of sum.entries()) {
      for (const [j, b] of one.entries()) next[i + j] = (next[i + j] as number) + a * b
    }
    sum = next
  }
  const tails = [...sum]
  for (let s = tails.length - 2; s >= 0; s -= 1)
    tails[s] = (tails[s] as number) + (tails[s + 1] as number)
  return tails
}
