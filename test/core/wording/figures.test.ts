import { describe, expect, test } from 'vitest'
import type { Ranks } from '@/core/findings/response-findings-shape.ts'
import type { Best, Rung } from '@/core/findings/rungs/rung-shape.ts'
import { asGoodFigures } from '@/core/wording/findings/as-good-figures.ts'
import { asHandledSentence } from '@/core/wording/findings/as-handled-sentence.ts'
import { bestFigures } from '@/core/wording/findings/best-figures.ts'
import { methodNotes } from '@/core/wording/findings/method-notes.ts'
import { rankFigures } from '@/core/wording/findings/rank-figures.ts'
import { rungFigures } from '@/core/wording/findings/rung-figures.ts'
import { trendSentence } from '@/core/wording/findings/trend-sentence.ts'

const absent = { reason: 'not-logged' as const }
const factor = {
  kind: 'hydration',
  name: 'Hydration',
  unitOfMeasure: '% of flour',
  ordered: true,
  splitsAt: 'mix' as const,
}
const levels = [62, 66, 70]
const naming = {
  factor,
  unit: 'batch' as const,
  levels: levels.map((name) => ({ id: `level-${name}`, name, control: false })),
}
const rung: Rung = {
  f: 4.306,
  df1: 2,
  df2: 14,
  p: 0.0351,
  residualSd: 0.7149,
  means: [],
  pairs: [],
  againstControl: absent,
  trend: absent,
  best: absent,
}
const best: Best = {
  answer: 'inside',
  linear: 7.04,
  quadratic: -0.05,
  vertex: 70.4, // 7.04 / (2 × 0.05)
  delta: { low: 68.84, high: 71.96 },
  fieller: { kind: 'interval', low: 68.1, high: 73.06 },
  lackOfFit: { reason: 'no-lack-of-fit-df' },
  asHandled: {
    linear: 7.1,
    quadratic: -0.05,
    vertex: 71,
    delta: { low: 69, high: 73 },
    fieller: { kind: 'everything', low: null, high: null },
  },
}

describe('the numbers behind the words', () => {
  test('of each rung that answers: F, both degrees of freedom, p, residual SD', () => {
    const found = { pieces: rung, doughs: absent, factor: absent }
    expect(rungFigures(found, naming)).toEqual([
      'These pieces: F 4.31 with 2 and 14 degrees of freedom, p 0.035; residual SD 0.715.',
    ])
    const unequalSpread = {
      ...{ p: 0.013, widest: 'level-70', calmest: 'level-62' },
      pairs: 'own-error' as const,
    }
    expect(rungFigures({ ...found, pieces: { ...rung, unequalSpread } }, naming)[1]).toBe(
      'Scores scatter more at 70 % than at 62 % (p 0.013), so each pair is judged by its own error.',
    )
  })

  test('of the slope, with its interval and p', () => {
    const trend = { slope: 0.213, se: 0.05, low: 0.112, high: 0.314, p: 0.0004 }
    expect(trendSentence(trend, 'Liking', naming)).toBe(
      'For each 1 % liking changes by +0.21 (+0.11 to +0.31, p below 0.001).',
    )
    // The interval is known to a hundredth: a slope near nothing is written no finer.
    const flat = { slope: -0.0073, se: 0.05, low: -0.1178, high: 0.1032, p: 0.887 }
    expect(trendSentence(flat, 'TVset', naming)).toBe(
      'For each 1 % TVset changes by −0.01 (−0.12 to +0.10, p 0.887).',
    )
    expect(trendSentence({ reason: 'choice-factor' }, 'Liking', naming)).toContain('Options')
  })

  test('of the best: curve, delta, Fieller, fit, and the levels as handled', () => {
    expect(bestFigures(best, levels, '% of flour')).toEqual([
      'Curve: 7.040 × L, −0.05000 × L²; highest at 70.4 %; by the delta method between 68.8 and 72.0; by Fieller between 68.1 and 73.1.',
      'Fit of the curve: With three levels a curve always fits; its fit cannot be tested.',
      'Over the levels as handled: highest at 71.0 %; by the delta method between 69.0 and 73.0; by Fieller anywhere.',
    ])
    const set = { kind: 'interval', low: 68.1, high: 73.1 } as const
    const place = {
      ...{ candidates: ['level-70'], low: 68, high: 72, openLow: false, openHigh: false },
      even: { at: 70.4, set },
    }
    expect(asHandledSentence({ place }, best, levels, '%')).toBe(
      'At the levels as handled an even hump lies near 71.0 %.',
    )
    expect(asHandledSentence({ place: { ...place, even: null } }, best, levels, '%')).toBe('')
    expect(bestFigures(absent, levels, '%')).toEqual([])
  })

  test('a curve that turns far outside the levels tried is given no place', () => {
    const straight: Best = { ...best, vertex: -483.2 }
    expect(bestFigures(straight, levels, '%')[0]).toBe(
      'Curve: 7.040 × L, −0.05000 × L²; highest far outside the levels tried; by Fieller between 68.1 and 73.1.',
    )
  })

  test.each([
    [{ low: 60, high: 80 }, 'by Fieller anywhere up to 60.0 or from 80.0 on.'],
    [{ low: null, high: 80 }, 'by Fieller anywhere from 80.0 on.'],
    [{ low: 60, high: null }, 'by Fieller anywhere up to 60.0.'],
  ])('of a set outside a gap %o', (gap, words) => {
    const open: Best = { ...best, fieller: { kind: 'outside', ...gap } }
    expect(bestFigures(open, levels, '%')[0]).toContain(words)
  })

  test('of the ranks: chi-square, W, rank sums, least difference and Page', () => {
    const ranks: Ranks = {
      chiSquare: 8.7042,
      df: 2,
      p: 0.0129,
      kendallW: 0.2418,
      rankSums: [
        { level: 'level-62', sum: 39.5 },
        { level: 'level-66', sum: 42.5 },
        { level: 'level-70', sum: 26 },
      ],
      leastDifference: 11.76,
      leftOut: 1,
      page: { l: 202.5, p: 0.02, method: 'exact-given-ties', direction: 'two-sided' },
    }
    expect(rankFigures(ranks, naming)).toEqual([
      'By rank: Friedman’s chi-square 8.70 with two degrees of freedom, p 0.013; Kendall’s W 0.24 of 1.',
      'Rank sums: 62 % 39.5, 66 % 42.5, 70 % 26. Two levels differ by rank where their sums are 11.8 or more apart.',
      'In rising order: Page’s L 202.5, p 0.020 (two-sided, since no direction was written down; exact, given the ties).',
      'One taster left out of the ranks, for want of a score at every level.',
    ])
    expect(rankFigures({ reason: 'needs-two-tasters' }, naming)).toEqual([
      'By rank: This needs at least two tasters.',
    ])
  })

  test('of what is as good', () => {
    const compared = { level: 'level-62', short: -0.31, low: -0.82, passes: true }
    const asGood = { margin: 1, best: 'level-66', named: null, levels: [compared] }
    expect(asGoodFigures(asGood, naming)).toEqual([
      '62 % against the best other level: −0.31, at least −0.82; as good.',
    ])
    const failed = { ...asGood, levels: [{ ...compared, passes: false }] }
    expect(asGoodFigures(failed, naming)).toEqual([
      '62 % against the best other level: −0.31, at least −0.82; not shown to be as good.',
    ])
    expect(asGoodFigures({ ...failed, named: 'level-66' }, naming)).toEqual([
      '62 % against the best other level: −0.31, at least −0.82; not named before the mix, so a hint.',
    ])
    expect(asGoodFigures(absent, naming)).toEqual([])
  })
})

test('every note says what was done and where it comes from', () => {
  for (const { title, text, source } of Object.values(methodNotes)) {
    expect(title.length).toBeGreaterThan(2)
    expect(text.length).toBeGreaterThan(40)
    expect(source).toMatch(/\.$/)
  }
})
