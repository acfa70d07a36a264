import { describe, expect, test } from 'vitest'
import {
  answersNeeded,
  fewestCorrect,
  tellApartPower,
} from '@/core/statistics/discrimination/panel-size.ts'
import { exactInterval, tellApart } from '@/core/statistics/discrimination/tell-apart.ts'
import { chanceCorrect, dPrimeOf } from '@/core/statistics/discrimination/tell-apart-tests.ts'
import reference from '../../../outside/reference/discrimination.json'
import { relativeError } from '../../../outside/relative-error.ts'

const alphas = [
  ['a10', 0.1],
  ['a05', 0.05],
  ['a01', 0.01],
  ['a001', 0.001],
] as const

const least = (...of: Parameters<typeof fewestCorrect>) => {
  const found = fewestCorrect(...of)
  return found.ok ? found.correct : null
}

describe('fewest right answers', () => {
  test('triangle: the exact table and the published one of FAO V7180E', () => {
    for (const row of [...reference.triangle, ...reference.published_fao_triangle]) {
      for (const [name, alpha] of alphas) expect(least('triangle', row.n, alpha)).toBe(row[name])
    }
  })

  test('duo-trio and one-sided paired comparison', () => {
    for (const row of reference.duo_trio_and_one_sided_paired) {
      for (const [name, alpha] of alphas) {
        expect(least('duo-trio', row.n, alpha)).toBe(row[name])
        expect(least('paired-comparison', row.n, alpha)).toBe(row[name])
      }
    }
  })

  test('two-sided paired comparison', () => {
    for (const row of reference.two_sided_preference) {
      for (const [name, alpha] of alphas) {
        expect(least('paired-comparison', row.n, alpha, 'two-sided')).toBe(row[name])
      }
    }
  })

  test('the two tables of 5 % counts in the fact sheet (6.3)', () => {
    const duoTrio = '8:7 9:8 10:9 12:10 14:11 16:12 18:13 20:15 22:16 24:17 26:18 28:19 30:20'
    const paired = '6:6 8:8 10:9 12:10 14:12 16:13 18:14 20:15 22:17 24:18 26:19 28:20 30:21'
    for (const [n, k] of duoTrio.split(' ').map((pair) => pair.split(':').map(Number))) {
      expect(least('duo-trio', n as number)).toBe(k)
    }
    for (const [n, k] of paired.split(' ').map((pair) => pair.split(':').map(Number))) {
      expect(least('paired-comparison', n as number, 0.05, 'two-sided')).toBe(k)
    }
    expect(least('paired-comparison', 5, 0.05, 'two-sided')).toBe(null)
  })
})

test('power and numbers of answers', () => {
  for (const { n, pd, alpha, power } of reference.power_triangle) {
    expect(relativeError(tellApartPower('triangle', n, pd, alpha), power)).toBeLessThan(1e-9)
  }
  for (const row of reference.sample_sizes) {
    const kind = row.test === 'triangle' ? 'triangle' : 'duo-trio'
    expect(answersNeeded(kind, row.pd, { alpha: row.alpha, power: row.power })).toEqual({
      ok: true,
      smallest: row.smallest_n,
      alwaysFrom: row.smallest_n_from_which_power_holds_always,
    })
  }
  expect(answersNeeded('triangle', 0, { limit: 200 })).toEqual({
    ok: false,
    reason: 'never-reached',
  })
})

describe('d′', () => {
  test('to the chance of a right answer, and back', () => {
    for (const row of reference.dprime_to_pc) {
      expect(relativeError(chanceCorrect('triangle', row.dprime), row.triangle)).toBeLessThan(1e-9)
      expect(relativeError(chanceCorrect('duo-trio', row.dprime), row.duo_trio)).toBeLessThan(1e-10)
      expect(
        relativeError(chanceCorrect('paired-comparison', row.dprime), row.two_afc),
      ).toBeLessThan(1e-12)
    }
    for (const row of reference.pc_to_dprime) {
      expect(dPrimeOf('triangle', row.pc)).toBeCloseTo(row.triangle_dprime, 7)
      expect(dPrimeOf('paired-comparison', row.pc)).toBeCloseTo(row.two_afc_dprime, 9)
    }
  })

  test('guessing is 0, certainty is without bound', () => {
    expect(dPrimeOf('triangle', 0.2)).toBe(0)
    expect(dPrimeOf('duo-trio', 1)).toBe(Number.POSITIVE_INFINITY)
  })
})

describe('a test that was held', () => {
  test('9 of 15 in a triangle', () => {
    const found = tellApart('triangle', 9, 15)
    if (!found.ok) throw new Error(found.reason)
    // P(X ≥ 9; 15, 1/3) by sums of binomial terms: 5005·2⁶ + 3003·2⁵ + 1365·2⁴ + 455·2³ + 105·2² + 15·2 + 1 over 3¹⁵.
    const ways = 5005 * 64 + 3003 * 32 + 1365 * 16 + 455 * 8 + 105 * 4 + 15 * 2 + 1
    expect(relativeError(found.p, ways / 3 ** 15)).toBeLessThan(1e-12)
    expect(found.share.estimate).toBe(0.6)
    expect(found.discriminators.estimate).toBeCloseTo(0.4, 12) // 1.5·0.6 − 0.5
    expect(found.dPrime.low).toBeLessThan(found.dPrime.estimate)
    expect(found.dPrime.high).toBeGreaterThan(found.dPrime.estimate)
  })

  test('exact limits at the ends: all or none of n', () => {
    // One-sided ends have closed forms: (α/2)^(1/n) and 1 − (α/2)^(1/n).
    expect(exactInterval(8, 8, 0.95)).toEqual({
      low: expect.closeTo(0.025 ** (1 / 8), 12),
      high: 1,
    })
    expect(exactInterval(0, 8, 0.95)).toEqual({
      low: 0,
      high: expect.closeTo(1 - 0.025 ** (1 / 8), 12),
    })
  })

  test('two-sided is twice the smaller tail, at most 1', () => {
    expect(tellApart('paired-comparison', 0, 6, 'two-sided')).toMatchObject({
      p: expect.closeTo(2 / 64, 14),
    })
    expect(tellApart('paired-comparison', 3, 6, 'two-sided')).toMatchObject({ p: 1 })
  })

  test('nobody answered; no count', () => {
    expect(tellApart('triangle', 0, 0)).toEqual({ ok: false, reason: 'no-rows' })
    expect(() => tellApart('triangle', 4, 3)).toThrow(RangeError)
  })
})
