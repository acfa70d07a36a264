import { describe, expect, it } from 'vitest'
import { rehearse } from '@/core/findings/rehearse.ts'

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
    const few = rehearse(design, 20, 9)
    expect(rehearse(design, 20, 9)).toEqual(few)
    expect(rehearse(design, 20, 10)).not.toEqual(few)
    const first = rehearse(design, 400, 9)
    expect(first.factor.answered).toBe(400)
    expect(first.doughs.answered).toBe(0)
    // 400 trials at 5 %: four standard errors of sqrt(0.05 x 0.95 / 400) = 0.011 on either side.
    expect(first.factor.called / 400).toBeLessThan(0.05 + 0.044)
    expect(first.rows.called).toBeGreaterThan(2 * first.factor.called)
    const said = Object.values(first.factor.said).reduce((sum, count) => sum + count, 0)
    expect(said).toBe(400)
  })
})
