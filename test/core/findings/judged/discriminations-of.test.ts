import { describe, expect, it } from 'vitest'
import { discriminationsOf } from '@/core/findings/judged/discriminations-of.ts'

describe('tell-apart tests', () => {
  it('agree with the exact binomial', () => {
    // Triangle, 5 of 6: (6 x 2 + 1) / 3^6 = 13/729. Duo-trio, 6 of 6: 1/64. Paired, 5 of 6, two-sided: 2 x 7/64.
    const tests = [
      { test: 'triangle', between: ['60', '70'], n: 6, correct: 5 },
      { test: 'duo-trio', between: ['60', '70'], n: 6, correct: 6 },
      { test: 'paired', between: ['60', '70'], n: 6, correct: 5 },
      { test: 'paired', between: ['60', '70'], n: 0, correct: 0 },
    ] as const
    const found = discriminationsOf(tests.map((each) => ({ ...each, between: ['60', '70'] })))
    expect(found).toHaveLength(3)
    expect(found[0]?.p).toBeCloseTo(13 / 729, 12)
    expect(found[0]?.discriminators.share).toBeCloseTo(0.75, 12)
    expect(found[1]?.p).toBeCloseTo(1 / 64, 12)
    expect(found[1]?.dPrime.estimate).toEqual({ reason: 'never-reached' })
    expect(found[2]?.p).toBeCloseTo(14 / 64, 12)
  })
})
