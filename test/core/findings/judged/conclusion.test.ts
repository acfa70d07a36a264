import { describe, expect, it } from 'vitest'
import { findings } from '@/core/findings/findings.ts'
import { conclusionOf } from '@/core/findings/judged/conclusion.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { madeUpRows, tableOf } from '../score-tables.ts'

const levels = [60, 65, 70, 75]

describe('what follows', () => {
  const rows = madeUpRows({ seed: 4, levels, tasters: 6, sessions: 4 })
  const expected = (direction: 'rises' | 'falls' | 'best-inside' | 'no-difference') =>
    conclusionOf(
      findings(
        tableOf(rows.map((row) => ({ ...row, liking: Number(row.liking) + Number(row.level) }))),
        { seed: 1, resamples: null },
      ),
      { expectation: { direction, bestGuess: null } },
      { toMend: 0 },
    )

  it('holds the expectation against the highest rung that answers', () => {
    expect(expected('rises')).toMatchObject({ rung: 'factor', expectation: 'held' })
    expect(expected('falls').expectation).toBe('not-held')
    expect(expected('no-difference').expectation).toBe('not-held')
  })

  it('confirms what one session shows, and repeats where nothing is known', () => {
    const one = tableOf(rows.filter(({ session }) => session === 1))
    const settled = {
      ...one,
      rows: one.rows.map((row) => ({ ...row, values: [row.level * 5 + Number(row.values[0])] })),
    }
    const next = (scores: ScoreTable) =>
      conclusionOf(findings(scores, { seed: 1, resamples: null }), scores, { toMend: 0 })
    expect(next(settled)).toMatchObject({ rung: 'pieces', expectation: 'none', next: ['confirm'] })
    expect(next({ ...one, rows: [] })).toEqual({
      rung: null,
      expectation: 'none',
      next: ['repeat'],
    })
  })
})
