import { describe, expect, it } from 'vitest'
import { detectable } from '@/core/design/detectable.ts'
import reference from './reference/power.json'

// reference/power.json: power of the F test in a randomized block, R 4.2.2, ncp = tasters × levels × f². With a single flight
// and no taste of the tasters' own, the rung "these pieces" is that design. When one pair differs by M and the others lie
// midway, f = √(M² / 2 / levels) / σ, so M = f·σ·√(2·levels) makes both the same.
describe('power at the margin against R', () => {
  for (const { tasters, levels, f, power } of reference.randomized_block)
    it(`${tasters} tasters, ${levels} levels, f ${f}`, () => {
      const sigma = 1.3
      const { thesePieces } = detectable({
        levels,
        tasters,
        flights: 1,
        sessions: 1,
        unit: 'batch',
        margin: f * sigma * Math.sqrt(2 * levels),
        spread: { residual: sigma, tasterLevel: 0, piece: 0.7, batch: 0.7 },
      })
      expect(thesePieces.ok && thesePieces.overallPowerAtMargin).toBeCloseTo(power, 8)
      // With two levels Tukey is the two-sided t test, which is the F test.
      if (levels === 2)
        expect(thesePieces.ok && thesePieces.pairPowerAtMargin).toBeCloseTo(power, 6)
    })
})
