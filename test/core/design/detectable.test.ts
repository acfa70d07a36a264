import { describe, expect, it } from 'vitest'
import { designOfPlan } from '@/core/design/design-of-plan.ts'
import { type DetectableRung, detectable, type TrialDesign } from '@/core/design/detectable.ts'
import { whatWouldHelp } from '@/core/design/what-would-help.ts'
import { madePlan } from '../made-plan.ts'

const design = (change: Partial<TrialDesign> = {}): TrialDesign => ({
  levels: 5,
  tasters: 4,
  flights: 1,
  sessions: 1,
  unit: 'batch',
  margin: 1,
  ...change,
})
function numbers(rung: DetectableRung) {
  if (!rung.ok) throw new Error(rung.reason)
  return rung
}

describe('detectable', () => {
  it('uses the variance of what each rung compares', () => {
    // These pieces, J = 4, F = 1: (0.36 + 1.44)/4 = 0.45; se √0.45, df 3 × 4 = 12.
    const one = detectable(design())
    expect(numbers(one.thesePieces).standardError).toBeCloseTo(Math.sqrt(0.45), 12)
    expect(numbers(one.thesePieces).df).toBe(12)
    // Two flights, one session: these doughs (0.36 + 1.44/4)/2 = 0.36, df 4; pieces (0.36 + 0.72)/4 = 0.27.
    const two = detectable(design({ flights: 2 }))
    expect(numbers(two.theseDoughs).standardError).toBeCloseTo(0.6, 12)
    expect(numbers(two.theseDoughs).df).toBe(4)
    expect(numbers(two.thesePieces).standardError).toBeCloseTo(Math.sqrt(0.27), 12)
    // Three sessions of two flights: the factor (0.16 + 0.36/2 + 1.44/8)/3 = 0.52/3, df 4 × 2 = 8.
    const three = detectable(design({ flights: 2, sessions: 3 }))
    expect(numbers(three.theFactor).standardError).toBeCloseTo(Math.sqrt(0.52 / 3), 12)
    expect(numbers(three.theFactor).df).toBe(8)
    // Pieces as units, three sessions of two flights: (0.36 + 0.36)/6 = 0.12; flights are no blocks, df 4 × 2.
    const late = detectable(design({ flights: 2, sessions: 3, unit: 'piece' }))
    expect(numbers(late.theFactor).standardError).toBeCloseTo(Math.sqrt(0.12), 12)
    expect(numbers(late.theFactor).df).toBe(8)
  })

  it('says what is missing where a rung cannot answer', () => {
    expect(detectable(design()).theFactor).toEqual({ ok: false, reason: 'needs-two-sessions' })
    expect(detectable(design()).theseDoughs).toEqual({ ok: false, reason: 'needs-two-flights' })
    expect(detectable(design({ sessions: 2 })).theseDoughs).toMatchObject({
      reason: 'factor-answers',
    })
    expect(detectable(design({ unit: 'piece', flights: 3 })).theFactor).toMatchObject({
      reason: 'needs-two-sessions',
    })
    expect(detectable(design({ tasters: 1 })).thesePieces).toMatchObject({
      reason: 'needs-two-tasters',
    })
    expect(detectable(design({ tasters: 0 })).theFactor).toMatchObject({ ok: false })
    expect(detectable(design({ levels: 1 })).thesePieces).toMatchObject({
      reason: 'needs-two-levels',
    })
  })

  it('gives the Tukey half-width of a printed table', () => {
    // q(0.95; 5, 12) = 4.51 (printed tables of the studentized range, from memory): half-width 4.51 × √0.45 = 3.025.
    expect(numbers(detectable(design()).thesePieces).tukeyHalfWidth).toBeCloseTo(
      4.51 * Math.sqrt(0.45),
      2,
    )
    // Slope over four steps, levels 0 … 4: t(0.975; 15) = 2.131 × √(0.45/10) × 4 = 1.808.
    expect(numbers(detectable(design()).thesePieces).slopeHalfWidth).toBeCloseTo(1.808, 2)
    expect(numbers(detectable(design({ levelValues: null })).thesePieces).slopeHalfWidth).toBeNull()
  })

  it('finds its own would-show difference with power 0.8', () => {
    const { wouldShow } = numbers(detectable(design()).thesePieces)
    const again = numbers(detectable(design({ margin: wouldShow })).thesePieces)
    expect(again.pairPowerAtMargin).toBeCloseTo(0.8, 6)
    // "Only a difference of about 4 points would show": four tasters, one session, five levels (methods, design section).
    expect(wouldShow).toBeGreaterThan(3)
    expect(wouldShow).toBeLessThan(4.5)
  })

  it('gets better with more of anything, and says by how much', () => {
    const help = whatWouldHelp(design({ sessions: 2, flights: 2 }))
    const now = numbers(help.now.theFactor).wouldShow
    expect(numbers(help.anotherSession.theFactor).wouldShow).toBeLessThan(now)
    expect(numbers(help.twoMoreTasters.theFactor).wouldShow).toBeLessThan(now)
    expect(help.oneLevelLess && numbers(help.oneLevelLess.thesePieces).df).toBe(9)
    expect(whatWouldHelp(design({ levels: 2 })).oneLevelLess).toBeNull()
  })

  it('asks for more where findings are looked at before the last session', () => {
    const plain = numbers(detectable(design({ sessions: 5, tasters: 6 })).theFactor)
    const looked = detectable(design({ sessions: 5, tasters: 6, looks: { most: 5 } }))
    // Early-strict rule, K = 5, five levels: at the last look p .039 instead of .05 (rules of evidence, R8), so a little more must be there.
    expect(numbers(looked.theFactor).wouldShow).toBeGreaterThan(plain.wouldShow)
    expect(numbers(looked.theFactor).wouldShow).toBeLessThan(plain.wouldShow * 1.1)
    expect(numbers(looked.theFactor).riseShows).toBeGreaterThan(plain.riseShows ?? 0)
    expect(numbers(looked.theFactor).ending?.named.chance).toBeLessThan(
      plain.ending?.named.chance ?? 0,
    )
    // These pieces are looked at once.
    expect(looked.thesePieces).toEqual(detectable(design({ sessions: 5, tasters: 6 })).thesePieces)
    // After two of five it takes p .0011: much more.
    const early = detectable(design({ sessions: 2, tasters: 6, looks: { most: 5 } })).theFactor
    const two = detectable(design({ sessions: 2, tasters: 6 })).theFactor
    expect(numbers(early).wouldShow).toBeGreaterThan(numbers(two).wouldShow * 1.3)
    const written = { hopedLevelId: null, mostSessions: 6, looks: true, againstUsual: false }
    expect(designOfPlan(madePlan({ writtenFirst: written })).looks).toEqual({ most: 6 })
  })

  it('reads the design off a plan', () => {
    expect(designOfPlan(madePlan())).toEqual({
      levels: 4,
      levelValues: [57, 61.5, 66.4, 72],
      tasters: 3,
      flights: 2,
      sessions: 2,
      unit: 'batch',
      margin: 1,
      looks: null,
    })
    const choice = madePlan({
      levels: madePlan().levels.map((level) => ({ ...level, value: null })),
      mainResponseId: null,
    })
    expect(designOfPlan(choice)).toMatchObject({ levelValues: null, margin: null })
  })
})
