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
    const found = discriminationsOf(
      tests.map((each) => ({
        ...each,
        between: ['60', '70'],
        people: Array.from({ length: each.n }, (_, at) => (at < each.correct ? 1 : 0)),
        sessions: 1,
      })),
    )
    expect(found).toHaveLength(3)
    expect(found[0]?.p).toBeCloseTo(13 / 729, 12)
    expect(found[0]?.discriminators.share).toBeCloseTo(0.75, 12)
    expect(found[1]?.p).toBeCloseTo(1 / 64, 12)
    expect(found[1]?.dPrime.estimate).toEqual({ reason: 'never-reached' })
    expect(found[2]?.p).toBeCloseTo(14 / 64, 12)
  })

  it('count each person once for the share of people, however often they answered', () => {
    const between: [string, string] = ['60', '70']
    // Four people answered three times each, all alike every time: 6 of 12 is 2 of 4 people.
    const [often] = discriminationsOf([
      { test: 'triangle', between, n: 12, correct: 6, people: [1, 1, 0, 0], sessions: 3 },
    ])
    const [once] = discriminationsOf([
      { test: 'triangle', between, n: 4, correct: 2, people: [1, 1, 0, 0], sessions: 1 },
    ])
    expect(often?.discriminators).toEqual(once?.discriminators)
    expect(often).toMatchObject({ people: 4, sessions: 3 })
    // Guesses all the same: P(X ≥ 6), X binomial(12, 1/3) = 0.1777 (R pbinom).
    expect(often?.p).toBeCloseTo(0.1777, 4)
    // Half a person: the exact interval runs on between whole counts.
    const [half] = discriminationsOf([
      { test: 'triangle', between, n: 8, correct: 5, people: [1, 1, 0.5, 0], sessions: 2 },
    ])
    expect(half?.discriminators.share).toBeCloseTo((2.5 / 4 - 1 / 3) / (2 / 3), 12)
    expect(half?.discriminators.low).toBeGreaterThanOrEqual(once?.discriminators.low ?? 1)
  })
})
