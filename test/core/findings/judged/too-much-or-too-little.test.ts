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

/** The table with its second response read as just about right. */
function withJustAboutRight(rows: Parameters<typeof tableOf>[0]): ScoreTable {
  const scores = tableOf(rows)
  const [liking, sour] = scores.responses
  if (!liking || !sour) throw new Error('two responses are wanted')
  const target = { is: 'target', at: 3 } as const
  return { ...scores, responses: [liking, { ...sour, scale: 'just-about-right', better: target }] }
}

describe('too much or too little', () => {
  // Five tasters, four levels. Everybody finds 75 too sour (5) and 60 too little (2); each too sour serving costs exactly
  // what the level does, so that only a score within the level can tell: taster a finds 70 too sour as well.
  const rows = levels.flatMap((level) =>
    ['a', 'b', 'c', 'd', 'e'].map((taster, who) => {
      const sour = level === 75 || (level === 70 && who > 0) ? 5 : level === 60 && who === 0 ? 2 : 3
      return { level, taster, liking: 7 - (sour > 3 ? 2 : 0) + 0.1 * who, sour }
    }),
  )
  const [found] = firstOf(withJustAboutRight(rows)).justAboutRight

  it('gives the shares over all answers', () => {
    // 20 answers: 1 below, 9 above (5 at 75, 4 at 70), 10 right.
    expect(found).toMatchObject({ responseId: 'sour', below: 0.05, right: 0.5, above: 0.45 })
  })

  it('gives no drop for a group that is too small', () => {
    expect(found?.drops[0]).toMatchObject({
      side: 'below',
      n: 1,
      drop: { reason: 'group-too-small' },
    })
  })

  it('refuses a drop that every row fits exactly', () => {
    expect(found?.drops[1]).toMatchObject({
      n: 9,
      tasters: 5,
      drop: { reason: 'no-residual-variance' },
    })
  })

  it('does not blame a side for a piece that is bad for another reason', () => {
    // Two pieces of each level; the second of 70 is burnt (three points less for all), and most call it too sour as well. Within that piece
    // those who do not call it sour score just as low: calling it sour costs nothing.
    const pieces = levels.flatMap((level) =>
      ['one', 'two'].flatMap((flight) =>
        ['a', 'b', 'c', 'd', 'e', 'f'].map((taster, who) => {
          const burnt = level === 70 && flight === 'two'
          const jitter = ((who * who + (level / 5) * who + (flight === 'two' ? who : 0)) % 5) * 0.1
          return {
            ...{ level, flight, taster, piece: `${level} ${flight}` },
            liking: 7 - (burnt ? 3 : 0) + jitter,
            sour: (burnt && who < 4) || (level === 75 && who > 3 && flight === 'one') ? 5 : 3,
          }
        }),
      ),
    )
    const all = withJustAboutRight(pieces)
    const scores = { ...all, rows: all.rows.filter(({ level }) => level >= 2) }
    const drop = firstOf(scores).justAboutRight[0]?.drops[1]
    expect(Math.abs(Number(drop?.drop))).toBeLessThan(0.3)
  })

  it('takes the drop within taster and piece', () => {
    // One score lifted by 0.2 leaves a spread; the drop stays near 2 and its interval holds 2.
    const lifted = rows.map((row) =>
      row.level === 65 && row.taster === 'c' ? { ...row, liking: row.liking + 0.2 } : row,
    )
    const drop = firstOf(withJustAboutRight(lifted)).justAboutRight[0]?.drops[1]
    expect(drop?.drop).toBeCloseTo(2, 1)
    expect(Number(drop?.low)).toBeLessThan(2)
    expect(Number(drop?.high)).toBeGreaterThan(2)
  })
})
