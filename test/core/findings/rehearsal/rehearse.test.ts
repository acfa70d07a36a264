import { describe, expect, it } from 'vitest'
import { commonSpread } from '@/core/design/spread.ts'
import { rehearse } from '@/core/findings/rehearsal/rehearse.ts'
import { effectsOf } from '@/core/findings/rehearsal/true-shapes.ts'

const design = {
  ...{ levels: 4, tasters: 5, sessions: 3, flights: 1 },
  ...{ unit: 'batch' as const, spread: commonSpread, margin: 2 },
}
const nothing = { effects: effectsOf('null', 4, 0), expected: 'rises' } as const

describe('a rehearsal', () => {
  it('repeats itself from its seed', () => {
    const few = rehearse(design, nothing, 10, 9)
    expect(rehearse(design, nothing, 10, 9)).toEqual(few)
    expect(rehearse(design, nothing, 10, 10)).not.toEqual(few)
  })

  it('keeps within the bounds where nothing is true, and shows the flat model overstating', () => {
    const trials = 300
    const found = rehearse(design, nothing, trials, 9)
    // At most four standard errors of sqrt(0.05 × 0.95 / 300) = 0.0126 beyond 5 %.
    expect(found.primaryFalse / trials).toBeLessThan(0.05 + 0.051)
    expect(found.claims['too-small'].false).toBe(0)
    expect(found.rowsDiffer).toBeGreaterThan(2 * found.primaryFalse)
  }, 30_000)

  it('finds a large rise in most trials, and is seldom false of a level that is just not good enough', () => {
    const trials = 150
    const rise = { effects: effectsOf('rise', 4, 4), expected: 'rises' } as const
    expect(rehearse(design, rise, trials, 3).claims.line.said).toBeGreaterThan(0.8 * trials)
    const short = { effects: [0, 0, 0, 2], expected: null }
    const judged = rehearse(design, short, trials, 4)
    expect(judged.claims['as-good'].false / trials).toBeLessThan(0.05 + 0.075)
  }, 30_000)
})
