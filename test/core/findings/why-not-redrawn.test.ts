import { describe, expect, it } from 'vitest'
import { bootstrapOfBest, whyNotRedrawn } from '@/core/findings/best/bootstrap-of-best.ts'
import { reasonText } from '@/core/wording/findings/reason-text.ts'
import { madeUpRows, tableOf } from './score-tables.ts'

const levels = [60, 65, 70, 75]
const few = tableOf(madeUpRows({ seed: 2, levels, tasters: 3, sessions: 1 }))

describe('why the best cannot be drawn again', () => {
  it('is known before any drawing, with what would answer it', () => {
    const refused = whyNotRedrawn(few, 0)
    expect(refused).toEqual({ reason: 'too-few-clusters', tasters: 8, sessions: 2 })
    expect(refused && reasonText(refused)).toContain(
      'Eight tasters or two sessions would answer it.',
    )
    expect(bootstrapOfBest(few, 0, { seed: 1, resamples: 10 })).toEqual(refused)
  })

  it('asks no tasters of what the baker measured alone', () => {
    const rows = madeUpRows({ seed: 2, levels, tasters: 1, sessions: 1 })
    const alone = tableOf(rows.map(({ taster: _, ...row }) => row))
    expect(whyNotRedrawn(alone, 0)).toEqual({ reason: 'too-few-clusters', sessions: 2 })
  })

  it('is nothing where there are tasters or sessions enough', () => {
    for (const enough of [
      { tasters: 8, sessions: 1 },
      { tasters: 2, sessions: 2 },
    ])
      expect(whyNotRedrawn(tableOf(madeUpRows({ seed: 2, levels, ...enough })), 0)).toBeNull()
  })
})
