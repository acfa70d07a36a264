import { describe, expect, test } from 'vitest'
import { correlation } from '@/core/statistics/description/correlation.ts'
import { describe as describeValues } from '@/core/statistics/description/describe.ts'
import { desirability, overallDesirability } from '@/core/statistics/description/desirability.ts'
import { justRightShares } from '@/core/statistics/description/just-right-shares.ts'
import { meanDrop } from '@/core/statistics/description/mean-drop.ts'
import tests from '../../../outside/reference/tests.json'
import { relativeError } from '../../../outside/relative-error.ts'

describe('what values look like', () => {
  test('Student’s sleep differences: R gives mean −1.58 and limits −2.4599, −0.7001', () => {
    const { x, y, result } = tests.paired_t_sleep
    const found = describeValues(x.map((value, i) => value - (y[i] as number)))
    expect(found.mean).toBeCloseTo(result.mean_diff, 12)
    expect(relativeError(found.low as number, result.ci[0] as number)).toBeLessThan(1e-12)
    expect(relativeError(found.high as number, result.ci[1] as number)).toBeLessThan(1e-12)
    expect(found.n).toBe(10)
  })

  test('medians, one value, none', () => {
    expect(describeValues([1, 2, 4, 10]).median).toBe(3) // type 7: halfway between the middle two
    expect(describeValues([7])).toMatchObject({
      n: 1,
      mean: 7,
      sd: null,
      low: null,
      high: null,
      median: 7,
    })
    expect(describeValues([])).toMatchObject({ n: 0, mean: null, median: null, least: null })
  })
})

describe('correlation', () => {
  test('stopping distances: r² is R’s 0.6510794', () => {
    const { x, y, r2 } = tests.linear_cars
    const found = correlation(x, y)
    if (!found.ok) throw new Error(found.reason)
    expect(relativeError(found.r ** 2, r2)).toBeLessThan(1e-12)
  })

  test('nothing to correlate', () => {
    expect(correlation([1, 2], [1, 2])).toEqual({ ok: false, reason: 'too-few-values' })
    expect(correlation([1, 2, 3], [5, 5, 5])).toEqual({ ok: false, reason: 'constant-values' })
    expect(() => correlation([1, 2, 3], [1, 2])).toThrow(RangeError)
  })
})

describe('mean drop', () => {
  const { jar, liking, too_little: little, too_much: much } = tests.penalty_jar

  test.each([
    ['too little', (code: number) => code < 3, little],
    ['too much', (code: number) => code > 3, much],
  ] as const)('%s, R’s pooled t test', (_, isGroup, expected) => {
    const kept = jar.flatMap((code, i) =>
      code === 3 || isGroup(code) ? [{ code, y: liking[i] as number }] : [],
    )
    const found = meanDrop(
      {
        y: kept.map(({ y }) => y),
        block: kept.map(() => 0),
        level: kept.map(() => 0),
        blockCount: 1,
        levelCount: 1,
      },
      kept.map(({ code }) => isGroup(code)),
    )
    if (!found.ok) throw new Error(found.reason)
    expect(relativeError(found.drop, expected.mean_drop)).toBeLessThan(1e-12)
    expect(relativeError(found.drop / found.se, expected.pooled.statistic)).toBeLessThan(1e-10)
    expect(relativeError(found.p, expected.pooled.p)).toBeLessThan(1e-9)
    expect([found.df, found.inGroup, found.inReference]).toEqual([
      expected.pooled.df,
      expected.n,
      28,
    ])
  })

  test('within taster and level: a harsh taster who finds it too much does not count twice', () => {
    // Taster 0 says right 8, much 6, right 8, much 6 …; taster 1, four points harsher, likewise with drops 2 and noise ±0.
    const y = [8, 6.5, 8, 5.5, 4, 2.5, 3, 1]
    const block = [0, 0, 0, 0, 1, 1, 1, 1]
    const isGroup = [false, true, false, true, false, true, false, true]
    const level = block.map(() => 0)
    const found = meanDrop({ y, block, level, blockCount: 2, levelCount: 1 }, isGroup)
    // Taster means of right less much: 8 − 6 = 2 and 3.5 − 1.75 = 1.75; equal numbers: 1.875.
    expect(found).toMatchObject({ ok: true, drop: expect.closeTo(1.875, 12), df: 5 })
  })

  test('a redundant level column is dropped; a group never met is told', () => {
    const one = {
      y: [5, 6, 7, 8],
      block: [0, 0, 1, 1],
      level: [0, 0, 1, 1],
      blockCount: 2,
      levelCount: 2,
    }
    expect(meanDrop(one, [false, true, false, true])).toMatchObject({
      ok: false,
      reason: 'no-residual-variance',
    })
    expect(meanDrop({ ...one, y: [5, 6, 7, 9] }, [false, true, false, true])).toMatchObject({
      drop: -1.5,
      df: 1,
    })
    expect(meanDrop(one, [false, false, true, true])).toEqual({
      ok: false,
      reason: 'group-not-separable',
    })
    expect(meanDrop(one, [false, false, false, false])).toEqual({
      ok: false,
      reason: 'group-empty',
    })
  })

  test('shares', () => {
    const found = justRightShares(jar, 3)
    expect(100 * found.right).toBeCloseTo(tests.penalty_jar.percent_jar, 10)
    expect(100 * found.below).toBeCloseTo(little.percent, 10)
    expect(100 * found.above).toBeCloseTo(much.percent, 10)
    expect(justRightShares([], 3)).toEqual({ below: 0, right: 0, above: 0, n: 0 })
  })
})

describe('desirability (Derringer & Suich 1980)', () => {
  test('by hand', () => {
    const higher = { kind: 'higher', worthless: 4, perfect: 8, bend: 2 } as const
    expect([3, 4, 6, 8, 9].map((value) => desirability(value, higher))).toEqual([0, 0, 0.25, 1, 1])
    const lower = { kind: 'lower', perfect: 2, worthless: 6, bend: 1 } as const
    expect([1, 2, 3, 6].map((value) => desirability(value, lower))).toEqual([1, 1, 0.75, 0])
    const target = { kind: 'target', low: 0, target: 4, high: 6, bend: 1 } as const
    expect([0, 1, 4, 5, 6].map((value) => desirability(value, target))).toEqual([
      0, 0.25, 1, 0.5, 0,
    ])
  })

  test('overall: geometric mean by weight, a single 0 spoils it unless it does not count', () => {
    const overall = (...parts: [number, number][]) =>
      overallDesirability(parts.map(([value, weight]) => ({ value, weight })))
    expect(overall([0.25, 1], [1, 1])).toBeCloseTo(0.5, 14)
    expect(overall([0.5, 3], [1, 1])).toBeCloseTo(0.5 ** 0.75, 14)
    expect(overall([0, 1], [1, 1])).toBe(0)
    expect(overall([0, 0], [0.7, 1])).toBeCloseTo(0.7, 14)
    expect(() => overall([1, 0])).toThrow(RangeError)
    expect(() => desirability(1, { kind: 'higher', worthless: 5, perfect: 5, bend: 1 })).toThrow(
      RangeError,
    )
  })
})
