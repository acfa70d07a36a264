import { describe, expect, test } from 'vitest'
import { tQuantile } from '@/core/statistics/distributions/students-t.ts'
import { powerBeyond } from '@/core/statistics/power/test-power.ts'
import { tukeyPower } from '@/core/statistics/power/would-show.ts'
import reference from './reference/power.json'

// reference/power.json, R 4.2.2, power.t.test with type = "paired": `pairs_strict` counts both tails, `pairs` the nearer one alone.
// A difference of d standard deviations of a pair's difference, over n pairs, is d·√n standard errors with n − 1 degrees of freedom.
describe('how many pairs tell two levels apart, against R', () => {
  test('all 24 sizes are there, both levels of risk and both powers', () => {
    const kinds = new Set(reference.t_tests.map(({ alpha, power }) => `${alpha} ${power}`))
    expect([reference.t_tests.length, kinds.size]).toEqual([24, 4])
  })

  for (const { d, alpha, power, pairs, pairs_strict } of reference.t_tests) {
    const of = (n: number) => powerBeyond(tQuantile(1 - alpha / 2, n - 1), n - 1, d * Math.sqrt(n))

    test(`d ${d}, risk ${alpha}, power ${power}: R's own ${pairs_strict.toFixed(3)} pairs give that power`, () => {
      // R's search ends at 1e-4 of n: powers agree to about 1e-6.
      expect(of(pairs_strict)).toBeCloseTo(power, 5)
      expect([of(Math.ceil(pairs) - 1) < power, of(Math.ceil(pairs)) >= power]).toEqual([
        true,
        true,
      ])
    })
    // Two levels over n sessions are such pairs: this is the chance the plan says. The variance of a level's mean is half that of a
    // difference, 1 of one pair.
    if (alpha === 0.05 && d >= 0.5)
      test(`a trial of two levels needs as many sessions: d ${d}, power ${power}`, () => {
        const chance = (sessions: number) => tukeyPower(d, 0.5 / sessions, 2, sessions - 1)
        const enough = Math.ceil(pairs)
        expect([chance(enough - 1) < power, chance(enough) >= power]).toEqual([true, true])
      })
  }

  // Cohen's table as it is usually quoted, from memory; R gives 33.367.
  test('half a standard deviation, 5 %, 8 in 10: 34 pairs', () => {
    const row = reference.t_tests.find(
      ({ d, alpha, power }) => d === 0.5 && alpha === 0.05 && power === 0.8,
    )
    expect(Math.ceil(row?.pairs ?? 0)).toBe(34)
  })
})
