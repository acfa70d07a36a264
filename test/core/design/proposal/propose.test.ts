import { describe, expect, it } from 'vitest'
import { chanceToShow } from '@/core/design/proposal/chance-to-show.ts'
import { usuallyHoped } from '@/core/design/proposal/hoped-to-show.ts'
import { usualHowMuch } from '@/core/design/proposal/how-much.ts'
import { propose } from '@/core/design/proposal/propose.ts'
import reference from '../../../outside/reference/power.json'

const shown = { hoped: 'best-inside', actsLate: false } as const

describe('the chance to show', () => {
  // reference/power.json, R 4.2.2 power.t.test: pairs for a paired difference. Two levels over sessions are such pairs: a difference of one
  // session's two units has the sd √2·σ_b where nothing else scatters. R's pairs are no whole numbers; the whole ones beside them bracket its power.
  for (const { d, alpha, power, pairs } of reference.t_tests)
    if (alpha === 0.05)
      it(`of a rise with two levels is R's paired t, d ${d}, power ${power}`, () => {
        const of = (sessions: number) =>
          chanceToShow(
            {
              ...{ levels: 2, tasters: 3, flights: 1, sessions, unit: 'batch' },
              spread: { residual: 0, tasterLevel: 0, piece: 0, batch: 1 / Math.SQRT2 },
            },
            'rise',
            d,
          )
        expect(of(Math.floor(pairs))).toBeLessThan(power)
        expect(of(Math.ceil(pairs))).toBeGreaterThan(power)
      })

  it('is none with one session, whatever is hoped for', () => {
    for (const hoped of ['best-inside', 'rise', 'as-good', 'pair'] as const)
      expect(
        chanceToShow({ levels: 3, tasters: 9, flights: 3, sessions: 1, unit: 'batch' }, hoped, 8),
      ).toBe(0)
  })

  it('of the least doing as well follows the plan tables of the rules', () => {
    // Rules of evidence, R3, M = 2, all equal, named before: 4 levels × 6 tasters × 3 sessions .63, 5 × 8 × 3 .65, 5 × 8 × 6 .97 (simulated).
    const of = (levels: number, tasters: number, sessions: number) =>
      chanceToShow({ levels, tasters, sessions, flights: 1, unit: 'batch' }, 'as-good', 2)
    expect(of(4, 6, 3)).toBeCloseTo(0.63, 1)
    expect(of(5, 8, 3)).toBeCloseTo(0.65, 1)
    expect(of(5, 8, 6)).toBeCloseTo(0.97, 1)
  })
})

describe('the plan that is proposed', () => {
  it('is three levels, two pieces of each, for two Fridays with friends; a third adds much', () => {
    const { way, others } = propose({ howMuch: usualHowMuch['two-fridays'], ...shown })
    expect(way).toMatchObject({ levels: 3, flights: 2, sessions: 2, tasters: 7, unit: 'batch' })
    expect(others.map(({ kind }) => kind)).toEqual(['more-days', 'tell-apart'])
    expect(others[0]?.chance).toBeGreaterThan(2 * way.chance - 0.05)
    // Triangle, 14 answers, 9 right needed; half tell them apart: P(X ≥ 9), X binomial(14, 2/3) = .690 (R pbinom).
    expect(others[1]?.chance).toBeCloseTo(0.69, 2)
  })

  it('shows nothing in one evening alone, and says what comes first', () => {
    const { way, others } = propose({ howMuch: usualHowMuch['one-evening-alone'], ...shown })
    expect(way).toMatchObject({ chance: 0, sessions: 1, levels: 3, flights: 2 })
    // sd of a level's mean √(.16 + .36/2 + 1.44/2) = 1.03; the best of three by 2 comes first: by simulation .856.
    expect(way.comesFirst).toBeCloseTo(0.856, 2)
    expect(others).toMatchObject([{ kind: 'more-days', sessions: 3 }])
  })

  it('counts each bench of a class as a session', () => {
    const { way, others } = propose({ howMuch: usualHowMuch.class, ...shown })
    expect(way).toMatchObject({ levels: 3, flights: 1, sessions: 4, sessionsAre: 'benches' })
    expect(others[0]).toMatchObject({ kind: 'fewer-benches', sessions: 3 })
    expect(others[1]).toMatchObject({ kind: 'late-factor', unit: 'piece' })
    expect(others[0]?.chance).toBeLessThan(way.chance)
    expect(others[1]?.chance).toBeGreaterThan(way.chance)
  })

  it('is never beaten by another design within what can be done', () => {
    for (const hoped of ['best-inside', 'rise', 'as-good', 'pair'] as const)
      for (const days of [2, 3, 5]) {
        const howMuch = { days, benches: 1, tasters: 6, doughs: 5, bites: 6 }
        const { way } = propose({ howMuch, hoped, actsLate: false })
        for (const levels of [2, 3, 4, 5])
          for (let flights = 1; flights * levels <= 6; flights += 1)
            expect(
              chanceToShow(
                { levels, flights, sessions: days, tasters: 6, unit: 'batch' },
                hoped,
                2,
              ),
            ).toBeLessThanOrEqual(way.chance + 0.01)
        expect(way.levels * way.flights).toBeLessThanOrEqual(6)
      }
  })

  it('splits one dough late where the factor allows it, and keeps the options of a choice', () => {
    const howMuch = usualHowMuch['two-fridays']
    expect(propose({ howMuch, hoped: 'best-inside', actsLate: true }).way.unit).toBe('piece')
    const options = propose({ howMuch, hoped: 'pair', actsLate: false, levels: 5 })
    expect(options.way.levels).toBe(5)
  })

  it('asks of each kind of factor what most want to know', () => {
    expect(usuallyHoped('hydration')).toBe('best-inside')
    expect(usuallyHoped('salt')).toBe('as-good')
    expect(usuallyHoped('choice')).toBe('pair')
  })
})
