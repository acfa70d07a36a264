import { describe, expect, it } from 'vitest'
import { bestInsideHolds } from '@/core/findings/best/best-inside.ts'
import { stillInside } from '@/core/findings/best/still-inside.ts'
import type { Best } from '@/core/findings/rungs/rung-shape.ts'
import { bestSentence } from '@/core/wording/findings/best-sentence.ts'

const values = [1.2, 1.6, 2, 2.4]
const naming = {
  factor: {
    kind: 'salt',
    name: 'Salt',
    unitOfMeasure: '% of flour',
    ordered: true,
    splitsAt: 'mix' as const,
  },
  unit: 'batch' as const,
}

function best(
  answer: Best['answer'],
  vertex: number,
  fieller: Best['fieller'],
  crossing?: Best['crossing'],
): Best {
  return {
    answer,
    linear: 1,
    quadratic: 1,
    vertex,
    delta: { low: 0, high: 0 },
    fieller,
    lackOfFit: { reason: 'no-scores' },
    asHandled: { reason: 'not-logged' },
    ...(crossing ? { crossing } : {}),
  }
}
const outside = (low: number | null, high: number | null) =>
  ({ kind: 'outside', low, high }) as const
const interval = (low: number, high: number) => ({ kind: 'interval', low, high }) as const
const everything = { kind: 'everything', low: null, high: null } as const
const unbounded = { from: null, upTo: null }

describe('an end and what the set leaves before it', () => {
  it.each<[string, Best, ReturnType<typeof stillInside>]>([
    [
      'a slope up whose set holds the upper levels',
      best('past-high', 2.05, outside(0.84, 1.83)),
      { from: 1.83, upTo: null },
    ],
    [
      'a slope down whose set holds the lower levels',
      best('past-low', 1.5, outside(1.7, 2.9)),
      { from: null, upTo: 1.7 },
    ],
    ['a set of everything', best('past-high', 2.05, everything), unbounded],
    ['an arm that holds all levels', best('past-high', 2.05, outside(0.2, 0.9)), unbounded],
    ['a steep slope, all of the set beyond', best('past-high', 9, outside(-4, 3.1)), null],
    ['an arm that is missing', best('past-high', 9, outside(-4, null)), null],
    [
      'a sure top past the end, its interval within',
      best('past-high', 2.6, interval(2.2, 4)),
      { from: 2.2, upTo: null },
    ],
    ['a sure top past the end, wholly', best('past-high', 2.8, interval(2.5, 4)), null],
    ['a sure bottom below the levels', best('past-high', 1, interval(0.5, 1.4)), null],
    ['a top inside', best('inside', 2, interval(1.8, 2.2)), null],
    [
      'a straight line',
      { ...best('past-high', 0, everything), vertex: { reason: 'no-curvature' } },
      null,
    ],
  ])('%s', (_, found, left) => {
    expect(stillInside(found, values)).toEqual(left)
  })

  it('claims an end only where the set allows no other', () => {
    const said = (found: Best) => bestSentence(found, naming, values)
    expect(said(best('past-high', 2.05, outside(0.84, 1.83)))).toBe(
      'It gets better towards the high end, 2.4 %, but where the best lies is not settled: it may be anywhere from 1.83 % up.',
    )
    expect(said(best('past-low', 1.5, outside(1.7, 2.9)))).toBe(
      'It gets better towards the low end, 1.2 %, but where the best lies is not settled: it may be anywhere from 1.70 % down.',
    )
    expect(said(best('past-high', 2.05, everything))).toBe(
      'It gets better towards the high end, 2.4 %, but where the best lies is not settled.',
    )
    expect(said(best('past-high', 9, outside(-4, 3.1)))).toBe(
      'The best is at or past the high end, 2.4 %.',
    )
  })

  const met = (low: number | null, high: number | null) => ({
    target: 5,
    of: 'line' as const,
    at: [2.6],
    stretches: [{ low, high }],
  })
  it.each<[string, Best, string]>([
    ['the set holds inside values', best('past-high', 2.05, outside(0.84, 1.83)), 'not-settled'],
    ['the set holds none', best('past-high', 9, outside(-4, 3.1)), 'not-held'],
    ['the worst is inside', best('least-inside', 2, interval(1.8, 2.2)), 'not-held'],
    ['inside, and bounded there', best('inside', 2, interval(1.8, 2.2)), 'held'],
    ['inside, but perhaps past the end', best('inside', 2, interval(1.8, 2.7)), 'not-settled'],
    ['neither line nor curve', best('flat', 2, everything), 'not-settled'],
    ['a target met perhaps inside', best('past-high', 2, everything, met(2.3, 3)), 'not-settled'],
    ['a target met beyond', best('past-high', 2, everything, met(2.5, 3)), 'not-held'],
  ])('a best expected inside: %s', (_, found, outcome) => {
    expect(bestInsideHolds(found, values)).toBe(outcome)
  })
})
