import { describe, expect, it } from 'vitest'
import { applyRemedy } from '@/core/fairness/apply-remedy.ts'
import { fairnessPerLevel } from '@/core/wording/fairness/fairness-per-level.ts'
import { fairnessText } from '@/core/wording/fairness/fairness-text.ts'
import { madePlan, madeStep } from '../made-plan.ts'
import { itemOf, itemsOf, waterPlanOf } from './fair-plan.ts'

const warm = {
  wantedDoughCelsius: 25.002,
  flourCelsius: 22,
  roomCelsius: 22,
  matched: false,
  mixedBy: 'hand' as const,
}

describe('dough temperature with one water', () => {
  // Reference values of the balance by hand, flour and room 22 °C, water 30 °C: 25.002 °C at 55 %, 25.633 °C at 80 %.
  it('is 0.6 °C warmer at 80 % than at 55 % with warm water, to be known, and fine once matched', () => {
    const plan = waterPlanOf({ temperature: warm })
    const item = itemOf(itemsOf(plan), 'water-temperature')
    expect(item?.amount?.value).toBeCloseTo(0.631, 2)
    expect(item?.perLevel?.map(({ value }) => Number(value.toFixed(2)))).toEqual([25, 25.63])
    expect(item?.severity).toBe('know')
    const matched = itemOf(itemsOf(applyRemedy(plan, { code: 'match-water' })), 'water-temperature')
    expect([matched?.severity, matched?.remedies]).toEqual(['fine', []])
  })

  it('is unknown without temperatures, and no item for one dough', () => {
    expect(itemOf(itemsOf(waterPlanOf()), 'water-temperature')?.data.state).toBe('unknown')
    const late = waterPlanOf({
      factor: { ...madePlan().factor, acts: { on: 'own' }, splitsAt: 'oven' },
      doughs: 'one',
    })
    expect(itemOf(itemsOf(late), 'water-temperature')).toBeUndefined()
  })
})

describe('water past what the yeast bears', () => {
  it('names no temperature below freezing', () => {
    const plan = waterPlanOf({ temperature: { ...warm, wantedDoughCelsius: 8, matched: true } })
    const item = itemOf(itemsOf(plan), 'water-past-limits')
    expect(item?.data.waterCelsius).toBeLessThan(0)
    expect(item && fairnessText(item, plan).sentence).toContain(
      'no water is cold enough for its dough, only ice in its place',
    )
  })
})

describe('dough temperature without water', () => {
  // Milk at 5 °C on flour of 22 °C, 60 and 80 %: 17.03 and 15.87 °C by the heat balance (see the water plan's test).
  it('is said, with how far apart the doughs come out and what helps', () => {
    const [flour] = waterPlanOf().formula.ingredients
    if (!flour) throw new Error('no flour')
    const milk = { id: 'milk', name: 'Milk', kind: 'liquid' as const, waterPercent: 88, celsius: 5 }
    const plan = waterPlanOf({
      factor: { ...madePlan().factor, acts: { on: 'ingredient', ingredientId: 'milk' } },
      levels: [
        { id: 'low', value: 60, label: '60', control: true },
        { id: 'high', value: 80, label: '80', control: false },
      ],
      formula: {
        ingredients: [flour, { ...milk, percent: 60 }],
        preferments: [],
        batchSize: { by: 'flour', flourGrams: 500 },
      },
      temperature: warm,
    })
    const item = itemOf(itemsOf(plan), 'water-temperature')
    if (!item) throw new Error('no item')
    expect([item.severity, item.data.state]).toEqual(['fix', 'no-water'])
    expect(item.perLevel?.map(({ value }) => value.toFixed(2))).toEqual(['17.03', '15.87'])
    expect(item.remedies).toEqual([{ code: 'warm-cold-ingredients' }])
    expect(fairnessText(item, plan).sentence).toMatch(
      /^No water goes in at the mix, so water cannot bring the doughs out equally warm: they come out 1\.2 °C apart, about \d+ min of proof \(\d+ to \d+\)\.$/,
    )
    expect(fairnessPerLevel(item, plan)?.what).toBe('dough')
  })
})

describe('flour or dough', () => {
  // Reference 55 %, 310 g: 200 g of flour a piece. Flour held: 200 × 1.80 = 360 g, apart 50/335 = 14.93 %.
  // Piece held: 310/1.80 = 172.22 g of flour, apart 27.78/186.11 = 14.93 %.
  it('says what each choice does, and the remedy turns one into the other', () => {
    const plan = waterPlanOf()
    const heavy = itemOf(itemsOf(plan), 'piece-mass')
    expect(heavy?.amount?.value).toBeCloseTo(14.925, 3)
    expect(heavy?.data.high).toBeCloseTo(360, 9)
    expect(heavy?.data.flourPercentOtherwise).toBeCloseTo(14.925, 3)
    expect(heavy?.severity).toBe('fix')
    const [remedy] = heavy?.remedies ?? []
    const held = itemsOf(remedy ? applyRemedy(plan, remedy) : plan)
    expect(itemOf(held, 'piece-mass')).toBeUndefined()
    const flour = itemOf(held, 'flour-per-piece')
    expect(flour?.data.low).toBeCloseTo(172.22, 2)
    expect(flour?.amount?.value).toBeCloseTo(14.925, 3)
    expect(flour?.severity).toBe('know')
  })

  it('is no rider of the piece mass itself', () => {
    const factor = { ...madePlan().factor, acts: { on: 'piece-mass' as const } }
    expect(itemOf(itemsOf(waterPlanOf({ factor })), 'piece-mass')).toBeUndefined()
  })
})

describe('salt and yeast in the water', () => {
  // 2 % salt on 57 and 72 % water: 3.509 and 2.778 % of the water, apart 0.731/3.143 = 23.26 %.
  it('is sized in percent of the middle', () => {
    const item = itemOf(itemsOf(madePlan()), 'salt-in-water')
    expect(item?.data.high).toBeCloseTo(3.509, 3)
    expect(item?.data.low).toBeCloseTo(2.778, 3)
    expect(item?.amount?.value).toBeCloseTo(23.26, 2)
    expect(item?.severity).toBe('know')
  })

  it('is not said of the ingredient that is the factor', () => {
    const factor = { ...madePlan().factor, acts: { on: 'salt' as const, ingredientId: 'salt' } }
    const levels = [1.6, 2, 2.4].map((value, at) => ({
      ...{ id: `s${at}`, value, label: String(value), control: at === 1 },
    }))
    const items = itemsOf(madePlan({ factor, levels }))
    expect(itemOf(items, 'salt-in-water')).toBeUndefined()
    // Lowest against highest: 0.8/2.0 = 40 %, and less salt ripens first; only rests end by the clock here.
    expect(itemOf(items, 'ripeness')?.amount?.value).toBeCloseTo(40, 9)
    expect(itemOf(items, 'ripeness')?.data.quicker).toBe('low')
    expect(itemOf(items, 'ripeness')?.severity).toBe('fix')
  })

  it('lets a proof that ends by a mark take ripeness away', () => {
    const steps = [madeStep('mix', 'mix'), madeStep('proof', 'proof', { waitSeconds: 3600 })]
    const plan = madePlan({ steps })
    const ripe = itemOf(itemsOf(plan), 'ripeness')
    // 57 to 72 %: 15/64.5 = 23.26 %.
    expect(ripe?.amount?.value).toBeCloseTo(23.26, 2)
    expect(ripe?.severity).toBe('know')
    const [remedy] = ripe?.remedies ?? []
    const ended = itemOf(itemsOf(remedy ? applyRemedy(plan, remedy) : plan), 'ripeness')
    expect([ended?.severity, ended?.data.endsBy]).toEqual(['fine', 'mark'])
  })
})

describe('bench flour and wet hands', () => {
  // 250 g at 70 % holds 147.06 g of flour and 102.94 g of water: with 5 g of flour 102.94/152.06 = 67.70 %.
  it('says what 5 g and 10 g do', () => {
    const levels = [
      { id: 'a', value: 64, label: '64', control: false },
      { id: 'b', value: 70, label: '70', control: true },
    ]
    const base = waterPlanOf({ levels, factor: { ...madePlan().factor, held: 'piece' } })
    const batchSize = { by: 'pieces' as const, pieces: 4, pieceGrams: 250, lossPercent: 0 }
    const plan = { ...base, formula: { ...base.formula, batchSize } }
    const item = itemOf(itemsOf(plan), 'bench-flour')
    expect(item?.data.fiveGrams).toBeCloseTo(67.7 - 70, 2)
    expect(item?.amount?.value).toBeCloseTo((70 - 67.698) / 6, 3)
    expect(item?.severity).toBe('know')
  })
})

describe('one dough or several', () => {
  it('names the riders of a time factor either way', () => {
    const steps = [...madePlan().steps, madeStep('cold', 'cold-proof', { waitSeconds: 86_400 })]
    const acts = { on: 'cold-hours' as const, stepId: 'cold' }
    const factor = { ...madePlan().factor, acts, splitsAt: 'proof' as const }
    const apart = itemOf(itemsOf(madePlan({ steps, factor, doughs: 'apart' })), 'doughs')
    expect(apart?.data).toEqual({ doughs: 'apart', time: true })
    expect(apart?.remedies).toEqual([{ code: 'one-dough' }])
    const one = itemOf(itemsOf(madePlan({ steps, factor, doughs: 'one' })), 'doughs')
    expect([one?.data.doughs, one?.severity]).toEqual(['one', 'know'])
  })
})

describe('starter', () => {
  it('says that the trap is taken care of, and how much older it gets', () => {
    // The share moves the starter of 100 % hydration in a dough of 65 %; three mixes of 8 min after the first: 24 min.
    const formula = {
      ...madePlan().formula,
      preferments: [
        {
          ...{ id: 'st', name: 'Starter', kind: 'starter' as const, flourSharePercent: 15 },
          parts: [
            { ingredientId: 'flour', percent: 100 },
            { ingredientId: 'water', percent: 100 },
          ],
        },
      ],
    }
    const levels = [10, 15, 20, 25].map((value, at) => ({
      ...{ id: `p${at}`, value, label: String(value), control: at === 1 },
    }))
    const acts = { on: 'preferment-share' as const, prefermentId: 'st' }
    const plan = madePlan({ formula, levels, factor: { ...madePlan().factor, acts } })
    const items = itemsOf(plan)
    expect(itemOf(items, 'starter-corrected')?.severity).toBe('fine')
    expect(itemOf(items, 'starter-age')?.amount?.value).toBe(24)
    // Mixed once for all, no mix waits for another.
    const steps = plan.steps.map((step) =>
      step.kind === 'mix' ? { ...step, once: true as const } : step,
    )
    expect(itemOf(itemsOf({ ...plan, steps }), 'starter-age')).toBeUndefined()
  })
})
