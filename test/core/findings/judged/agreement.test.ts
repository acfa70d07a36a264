import { describe, expect, it } from 'vitest'
import { findings } from '@/core/findings/findings.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { tableOf } from '../score-tables.ts'

const levels = [60, 65, 70, 75]

function firstOf(scores: ScoreTable) {
  const [response] = findings(scores, { seed: 1, resamples: 50 }).responses
  if (!response) throw new Error('no response')
  return response
}

describe('agreement', () => {
  it('correlates a taster with the rest and names the level they like best', () => {
    const score: Record<string, number[]> = {
      a: [1, 2, 3, 4],
      b: [2, 3, 4, 5],
      c: [4, 3, 2, 1],
      d: [5, 5, 5, 5],
    }
    const rows = Object.entries(score).flatMap(([taster, row]) =>
      row.map((liking, at) => ({ level: levels[at] ?? 0, taster, liking })),
    )
    const [a, , c, d] = firstOf(tableOf(rows)).agreement
    // Without a the rest rise: (2+4+5)/3, 11/3, 11/3, 11/3: no rise at all, so nothing to correlate with.
    expect(a).toMatchObject({ taster: 'a', best: '75', correlation: { reason: 'constant-values' } })
    expect(a?.sd).toBeCloseTo(Math.sqrt(5 / 3), 12)
    // Without c the rest rise by 2/3 a level while c falls.
    expect(c).toMatchObject({ best: '60' })
    expect(c?.correlation).toBeCloseTo(-1, 12)
    expect(d).toMatchObject({ best: { reason: 'tied' }, sd: 0 })
  })
  it('claims no agreement by rank when one taster alone scored every level', () => {
    const whole = levels.map((level, at) => ({ level, taster: 'a', liking: at + 1 }))
    const partly = levels.slice(1).map((level, at) => ({ level, taster: 'b', liking: at + 2 }))
    // Of the two only one can be ranked: one more who scores every level would make two.
    expect(firstOf(tableOf([...whole, ...partly])).ranks).toEqual({
      reason: 'needs-two-tasters',
      tasters: 3,
    })
    const both = levels.map((level, at) => ({ level, taster: 'c', liking: at + 3 }))
    expect(firstOf(tableOf([...whole, ...partly, ...both])).ranks).toMatchObject({
      kendallW: 1,
      leftOut: 1,
    })
  })
})
