import { describe, expect, test } from 'vitest'
import { allPairs } from '@/core/statistics/block-model/all-pairs.ts'
import { fitLevels, type LevelFit } from '@/core/statistics/block-model/level-fit.ts'
import { levelMeans } from '@/core/statistics/block-model/level-means.ts'
import { coded } from '../../../outside/coded.ts'
import tests from '../../../outside/reference/tests.json'
import { relativeError } from '../../../outside/relative-error.ts'

function fitted(result: ReturnType<typeof fitLevels>): LevelFit {
  if (!result.ok) throw new Error(result.reason)
  return result
}

function fromTable(table: readonly (readonly number[])[]) {
  const levelCount = table[0]?.length ?? 0
  return {
    y: table.flat(),
    block: table.flatMap((row, i) => row.map(() => i)),
    level: table.flatMap((row) => row.map((_, j) => j)),
    blockCount: table.length,
    levelCount,
  }
}

describe('randomised blocks against R (lm, anova, emmeans, TukeyHSD)', () => {
  // tests.json rbd_rounding: round-first-base times, 22 players, three ways.
  const { data } = tests.friedman_rounding
  const expected = tests.rbd_rounding
  const fit = fitted(fitLevels(fromTable(data)))

  test('F of the level after blocks', () => {
    const row = expected.anova[1]
    expect(relativeError(fit.f, row?.['F.value'] as number)).toBeLessThan(1e-10)
    expect(relativeError(fit.p, row?.['Pr..F.'] as number)).toBeLessThan(1e-9)
    expect([fit.df1, fit.df2]).toEqual([2, 42])
    const residual = expected.anova[2]?.['Mean.Sq'] as number
    expect(relativeError(fit.residualSd ** 2, residual)).toBeLessThan(1e-10)
  })

  test('marginal means with plain t limits', () => {
    for (const [i, mean] of levelMeans(fit).entries()) {
      const row = expected.means[i]
      expect(relativeError(mean.estimate, row?.emmean as number)).toBeLessThan(1e-12)
      expect(relativeError(mean.se, row?.SE as number)).toBeLessThan(1e-10)
      expect(relativeError(mean.low, row?.['lower.CL'] as number)).toBeLessThan(1e-10)
      expect(relativeError(mean.high, row?.['upper.CL'] as number)).toBeLessThan(1e-10)
    }
  })

  test('all pairs by Tukey', () => {
    for (const [i, pair] of allPairs(fit).entries()) {
      const row = expected.pairs[i] // printed as a − b
      expect(pair.difference).toBeCloseTo(-(row?.estimate as number), 12)
      expect(relativeError(pair.se, row?.SE as number)).toBeLessThan(1e-10)
      expect(pair.low).toBeCloseTo(-(row?.['upper.CL'] as number), 7)
      expect(pair.high).toBeCloseTo(-(row?.['lower.CL'] as number), 7)
      expect(relativeError(pair.p, row?.['p.value'] as number)).toBeLessThan(1e-6)
      const other = expected.TukeyHSD[i]
      expect(relativeError(pair.p, other?.['p adj'] as number)).toBeLessThan(1e-6)
      expect(pair.low).toBeCloseTo(other?.lwr as number, 7)
    }
  })
})

test('penicillin blends (Box, Hunter & Hunter; sums of squares 264, 70, 226)', () => {
  const { data, anova, pairs_tukey } = tests.rbd_penicillin
  const block = coded(data.map(({ blend }) => blend))
  const level = coded(data.map(({ trt }) => trt))
  const fit = fitted(
    fitLevels({
      y: data.map(({ y }) => y),
      block: block.codes,
      level: level.codes,
      blockCount: 5,
      levelCount: 4,
    }),
  )
  expect(fit.residual.sumOfSquares).toBeCloseTo(226, 9)
  expect(fit.f * 3 * fit.residualSd ** 2).toBeCloseTo(70, 9)
  expect(relativeError(fit.p, anova[1]?.['Pr..F.'] as number)).toBeLessThan(1e-9)
  for (const [i, pair] of allPairs(fit).entries()) {
    const row = pairs_tukey[i]
    expect(pair.difference).toBeCloseTo(-(row?.estimate as number), 10)
    expect(relativeError(pair.p, row?.['p.value'] as number)).toBeLessThan(1e-6)
    expect(pair.low).toBeCloseTo(-(row?.['upper.CL'] as number), 6)
  }
})

test('a missing cell worked by hand', () => {
  // Blocks 1: A 1, B 3; 2: A 2, B 5; 3: A 6 alone. Block 3 says nothing about B − A.
  // B − A: the mean of 2 and 3 = 2.5; residual: each block off by ±0.25 in A and B, 4·0.0625 = 0.25 on 5 − 3 − 1 = 1 df.
  const fit = fitted(
    fitLevels({
      y: [1, 3, 2, 5, 6],
      block: [0, 0, 1, 1, 2],
      level: [0, 1, 0, 1, 0],
      blockCount: 3,
      levelCount: 2,
    }),
  )
  const pair = allPairs(fit)[0]
  expect(pair?.difference).toBeCloseTo(2.5, 14)
  expect(fit.df2).toBe(1)
  expect(fit.residualSd).toBeCloseTo(0.5, 14)
  expect(pair?.se).toBeCloseTo(0.5, 14) // σ·√(1/2 + 1/2)
  // SS of the level after blocks: 2 blocks × 2.5²/2 = 6.25; F = 6.25/0.25 = 25.
  expect(fit.f).toBeCloseTo(25, 12)
  // Marginal A: blocks 2, 3.5 and 6 on average, less half of 2.5 in the two full blocks:
  // mean over blocks of (block mean − share of B·2.5) = (0.75 + 2.25 + 6)/3 = 3.
  expect(levelMeans(fit).map(({ estimate }) => estimate)).toEqual([
    expect.closeTo(3, 13),
    expect.closeTo(5.5, 13),
  ])
})

describe('what cannot be answered has a reason', () => {
  const row = (y: number[], block: number[], level: number[]) => ({
    y,
    block,
    level,
    blockCount: Math.max(0, ...block) + 1,
    levelCount: Math.max(0, ...level) + 1,
  })
  test.each([
    ['no-rows', row([], [], [])],
    ['one-level', row([1, 2], [0, 1], [0, 0])],
    ['level-without-rows', row([1, 2, 3], [0, 0, 0], [0, 0, 2])],
    ['levels-not-connected', row([1, 2, 3, 4], [0, 0, 1, 1], [0, 0, 1, 1])],
    ['no-residual-df', row([1, 2], [0, 0], [0, 1])],
    ['all-equal', row([5, 5, 5, 5], [0, 0, 1, 1], [0, 1, 0, 1])],
    // Levels differ by exactly 0.3 in every block: F would be infinite.
    [
      'no-residual-variance',
      row([6.1, 6.4, 7.2, 7.5, 5.5, 5.8], [0, 0, 1, 1, 2, 2], [0, 1, 0, 1, 0, 1]),
    ],
    // Only blocks differ: F would be 0/0.
    ['no-residual-variance', row([6.1, 6.1, 7.2, 7.2], [0, 0, 1, 1], [0, 1, 0, 1])],
  ])('%s', (reason, rows) => {
    expect(fitLevels(rows)).toEqual({ ok: false, reason })
  })

  test('a value that is no number is a programmer’s mistake', () => {
    expect(() => fitLevels(row([1, Number.NaN], [0, 0], [0, 1]))).toThrow(RangeError)
  })

  test('two levels and two blocks are enough', () => {
    // Differences 1 and 3: mean 2, sd √2, t = 2/(√2/√2) = 2, F = 4 with 1 and 1 df, p = 1 − (2/π)·atan 2.
    const fit = fitted(fitLevels(row([1, 2, 4, 7], [0, 0, 1, 1], [0, 1, 0, 1])))
    expect(fit.f).toBeCloseTo(4, 12)
    expect(fit.p).toBeCloseTo(1 - (2 / Math.PI) * Math.atan(2), 12)
  })
})
