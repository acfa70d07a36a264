import { describe, expect, test } from 'vitest'
import type { ResponseFindings, VerdictKind } from '@/core/findings/response-findings-shape.ts'
import { verdictSentence } from '@/core/wording/findings/verdict-sentence.ts'

const naming = {
  factor: {
    kind: 'hydration',
    name: 'Hydration',
    unitOfMeasure: '% of flour',
    ordered: true,
    splitsAt: 'mix' as const,
  },
  unit: 'batch' as const,
}
const absent = { reason: 'no-scores' as const }
const verdict = (kind: VerdictKind, difference = 1.7) => ({
  kind,
  difference,
  low: difference - 0.6,
  high: difference + 0.6,
  margin: 1,
  between: [66, 74] as [number, number],
})

function found(
  pieces: ResponseFindings['verdict']['pieces'],
  factor: ResponseFindings['verdict']['factor'],
): ResponseFindings {
  const level = { n: 8, mean: 5, sd: 1, low: 4, high: 6, median: 5 }
  return {
    name: 'Liking',
    n: 16,
    failures: 0,
    levels: [66, 74].map((value) => ({ level: value, ...level })),
    rows: absent,
    pieces: absent,
    doughs: absent,
    factor: absent,
    ranks: absent,
    bootstrap: absent,
    justAboutRight: [],
    equivalence: absent,
    easiest: absent,
    agreement: [],
    verdict: { pieces, doughs: { reason: 'several-sessions' }, factor },
  }
}

const kinds: VerdictKind[] = ['matters', 'differs', 'too-small', 'leans', 'not-settled']

describe('the verdict in two halves', () => {
  test('names the levels, the size and the margin', () => {
    const { shown } = verdictSentence(
      found(verdict('matters'), { reason: 'needs-two-sessions' }),
      naming,
    )
    expect(shown).toContain('margin of 1')
    expect(shown).toContain('1.7 higher at 74 % than at 66 %')
    expect(shown).toContain('+1.1 to +2.3')
  })

  test('turns a fall round, so that the higher level is named first', () => {
    const { shown } = verdictSentence(found(verdict('differs', -1.7), absent), naming)
    expect(shown).toContain('1.7 higher at 66 % than at 74 %')
    expect(shown).toContain('+1.1 to +2.3')
  })

  test('one session cannot speak of the factor', () => {
    const { known } = verdictSentence(
      found(verdict('matters'), { reason: 'needs-two-sessions', sessions: 2 }),
      naming,
    )
    expect(known).toContain('one session cannot speak')
    expect(known).toContain('two sessions')
    expect(known).not.toContain('matters')
  })

  test('says that a factor leans the same way only where it does', () => {
    const same = verdictSentence(found(verdict('matters'), verdict('leans')), naming).known
    const other = verdictSentence(found(verdict('matters'), verdict('leans', -1.7)), naming).known
    expect(same).toContain('the same way')
    expect(other).toContain('another way')
  })

  test.each(kinds.flatMap((pieces) => kinds.map((factor) => [pieces, factor] as const)))(
    'pieces %s and factor %s: both halves speak, and nothing is called no effect',
    (pieces, factor) => {
      const { shown, known } = verdictSentence(found(verdict(pieces), verdict(factor)), naming)
      expect(shown).not.toBe('')
      expect(known).not.toBe('')
      expect(`${shown} ${known}`).not.toMatch(
        /no effect|NaN|undefined|not significant|insignificant/i,
      )
      expect(/holds for hydration itself|itself matters/.test(known)).toBe(factor === 'matters')
    },
  )

  test('claims no change that the scale has no room for', () => {
    const wide = (low: number, high: number) =>
      verdictSentence(found({ ...verdict('not-settled'), low, high }, absent), {
        ...naming,
        scale: 'nine-point',
      }).shown
    expect(wide(-37.8, 32.3)).toBe(
      'These pieces do not settle it: from 66 % to 74 % liking could change by anything its scale allows.',
    )
    expect(wide(-2.1, 9.4)).toContain('anything from −2.1 to +8.0')
    const { shown } = verdictSentence(
      found({ ...verdict('differs', 4.5), low: 0.2, high: 8.8 }, absent),
      { ...naming, scale: 'nine-point' },
    )
    expect(shown).toContain('4.5 higher at 74 % than at 66 % (+0.2 to +8.0)')
  })

  test('a measurement without tasters speaks of the factor alone', () => {
    const { shown, known } = verdictSentence(
      found({ reason: 'needs-two-tasters' }, verdict('not-settled')),
      naming,
    )
    expect(shown).toBe(
      'What hydration does to liking is not settled: from 66 % to 74 % liking could change by anything from +1.1 to +2.3.',
    )
    expect(known).toBe('')
  })

  describe('the best is said once', () => {
    const bestAt = (
      vertex: number,
      low: number,
      high: number,
      answer: 'inside' | 'flat' = 'inside',
    ) => ({
      f: 9,
      df1: 4,
      df2: 20,
      p: 0.001,
      residualSd: 1,
      means: [],
      pairs: [],
      againstControl: absent,
      trend: absent,
      best: {
        answer,
        linear: 1,
        quadratic: -1,
        vertex,
        delta: { low, high },
        fieller: { kind: 'interval' as const, low, high },
        lackOfFit: absent,
        asHandled: absent,
      },
    })
    const said = (pieces: ReturnType<typeof bestAt>, factor: ReturnType<typeof bestAt>) =>
      verdictSentence({ ...found(verdict('matters'), verdict('matters')), pieces, factor }, naming)

    test('where the factor bounds the same place, the first half names it and the second is short', () => {
      const { shown, known } = said(bestAt(73.1, 72.8, 73.5), bestAt(73.4, 72.9, 73.9))
      expect(shown).toContain('liking is best near 73.4 %, somewhere between 72.9 and 73.9 %')
      expect(known).toBe('It holds for hydration itself, whenever the doughs are made again.')
    })

    test('where it bounds another place, both are said', () => {
      const { shown, known } = said(bestAt(70.1, 69.2, 71), bestAt(73.4, 72.9, 73.9))
      expect(shown).toContain('70.1 %')
      expect(known).toContain('73.4 %')
    })

    test('where it bounds none, that is said', () => {
      const { shown, known } = said(bestAt(73.1, 72.8, 73.5), bestAt(73.4, 72.9, 73.9, 'flat'))
      expect(shown).toContain('73.1 %')
      expect(known).toContain('not bounded yet')
    })
  })
})
