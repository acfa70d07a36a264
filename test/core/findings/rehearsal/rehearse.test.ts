import { describe, expect, it } from 'vitest'
import { rehearse } from '@/core/findings/rehearsal/rehearse.ts'

describe('a rehearsal', () => {
  const spread = { residual: 1.2, tasterLevel: 0.6, piece: 0.6, batch: 0.4 }
  const design = {
    levels: 3,
    tasters: 4,
    sessions: 3,
    flights: 1,
    unit: 'batch',
    spread,
    margin: 1,
  } as const

  it('repeats itself from its seed, and shows the flat model overstating', () => {
    const few = rehearse(design, 10, 9)
    expect(rehearse(design, 10, 9)).toEqual(few)
    expect(rehearse(design, 10, 10)).not.toEqual(few)
    const first = rehearse(design, 120, 9)
    expect(first.factor.answered).toBe(120)
    expect(first.doughs.answered).toBe(0)
    // 120 trials at 5 %: at most four standard errors of sqrt(0.05 x 0.95 / 120) = 0.02 beyond it.
    expect(first.factor.called / 120).toBeLessThan(0.05 + 0.08)
    expect(first.rows.called).toBeGreaterThan(2 * first.factor.called)
    const said = Object.values(first.factor.said).reduce((sum, count) => sum + count, 0)
    expect(said).toBe(120)
  }, 30_000)
})
