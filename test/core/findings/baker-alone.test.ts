import { describe, expect, it } from 'vitest'
import { findings } from '@/core/findings/findings.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { rankFigures } from '@/core/wording/findings/rank-figures.ts'
import { rungLines } from '@/core/wording/findings/rung-text.ts'
import { madeUpRows, tableOf } from './score-tables.ts'

/** Values that nobody tasted: one a dough, or one a piece of every flight. */
function measured(of: 'dough' | 'piece', sessions: number, flights = 1): ScoreTable {
  const rows = madeUpRows({ seed: 3, levels: [60, 65, 70], tasters: 1, sessions, flights })
  const table = tableOf(rows.map(({ taster: _, ...row }) => row))
  if (of === 'piece') return table
  return { ...table, rows: table.rows.map((row) => ({ ...row, piece: row.batch })) }
}

function said(scores: ScoreTable) {
  const document = findings(scores, { seed: 1, resamples: null })
  const [found] = document.responses
  if (!found) throw new Error('the table has a response')
  const [pieces, doughs] = rungLines(found, document).map(({ says }) => says)
  return { pieces, doughs, ranks: rankFigures(found.ranks, document).join(' ') }
}

describe('what the baker scored alone', () => {
  it('asks for the doughs to be made again, not for tasters', () => {
    const { pieces, doughs, ranks } = said(measured('dough', 1))
    const again =
      'One session cannot answer this: the doughs must be made again. Two sessions would answer it.'
    expect(pieces).toBe(again)
    expect(doughs).toBe(again)
    expect(ranks).not.toContain('would answer it')
  })

  it('points to the rung that answers once there are two sessions', () => {
    const { pieces } = said(measured('dough', 2))
    expect(pieces).toBe('With more than one session the factor’s own rung answers this.')
  })

  it('asks for two flights where the value is of a piece', () => {
    expect(said(measured('piece', 1)).doughs).toContain('Two flights would answer it.')
    expect(said(measured('piece', 1, 2)).pieces).not.toContain('would answer it')
    const late: ScoreTable = { ...measured('piece', 1), unit: 'piece' }
    expect(said(late).pieces).toContain('Two flights would answer it.')
  })
})
