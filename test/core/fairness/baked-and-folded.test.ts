import { describe, expect, it } from 'vitest'
import { applyRemedy } from '@/core/fairness/apply-remedy.ts'
import { doneCoreCelsius } from '@/core/fairness/items/bake-items.ts'
import { hydrationPercent } from '@/core/formula/hydration.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { plannedBatches } from '@/core/trial/planned-batches.ts'
import { fairnessText } from '@/core/wording/fairness/fairness-text.ts'
import { remedyText } from '@/core/wording/fairness/remedy-text.ts'
import { endsWords } from '@/core/wording/plan/ends-by-text.ts'
import { madePlan, madeStep } from '../made-plan.ts'
import { itemOf, itemsOf, kitchen, waterPlanOf } from './fair-plan.ts'

const bake = { ...madeStep('bake', 'bake'), waitSeconds: 22 * 60 }
const hot = (steps: Plan['steps'] = [bake]): Plan => ({
  ...madePlan({ steps }),
  factor: {
    ...madePlan().factor,
    ...{ acts: { on: 'bake-temperature', stepId: bake.id }, splitsAt: 'oven' },
    ...{ unitOfMeasure: '°C', name: 'Oven' },
  },
  levels: [200, 260].map((value) => ({
    ...{ id: `l${value}`, value, label: String(value), control: value === 200 },
  })),
})

describe('bake by the clock or by the crumb', () => {
  it('200 to 260 °C at 22 min each is to be fixed, and fine once each ends at its core', () => {
    const plan = hot()
    const item = itemOf(itemsOf(plan), 'bake-ends')
    if (!item) throw new Error('no item')
    expect(item.severity).toBe('fix')
    expect(fairnessText(item, plan).sentence).toContain('All bake 22 min by the clock')
    const [remedy] = item.remedies
    if (!remedy) throw new Error('no remedy')
    // lean doughs are done at 93 to 98 °C
    expect(remedy).toMatchObject({ code: 'end-by-core', celsius: 96 })
    expect(remedyText(remedy, plan)).toContain('96 °C of core')
    const mended = itemOf(itemsOf(applyRemedy(plan, remedy)), 'bake-ends')
    expect([mended?.severity, mended?.data.by]).toEqual(['fine', 'core'])
  })

  it('loss or colour end it by one press too', () => {
    const plan = hot()
    const remedies = itemOf(itemsOf(plan), 'bake-ends')?.remedies ?? []
    const ended = (['end-by-loss', 'end-by-colour'] as const).map((code) => {
      const remedy = remedies.find((one) => one.code === code)
      if (!remedy) throw new Error(`no ${code}`)
      const mended = applyRemedy(plan, remedy)
      expect(itemOf(itemsOf(mended), 'bake-ends')).toMatchObject({
        ...{ severity: 'fine', data: { by: 'mark' } },
      })
      return mended.steps[0]
    })
    // 10 to 13 % in bakers' pages, 12 to 17 at home: a start between them
    expect(ended[0]?.endsBy).toEqual({ by: 'mark', mark: 'bake-loss', lossPercent: 12 })
    expect(ended.map((step) => step && endsWords(step, String))).toEqual([
      'until 12 % lighter',
      'until its colour',
    ])
  })

  it('water and piece mass are to be known; salt does not change the bake', () => {
    const wet = itemOf(itemsOf(waterPlanOf({ steps: [bake] })), 'bake-ends')
    expect(wet?.severity).toBe('know')
    const salty = madePlan({ steps: [bake] })
    const salt = {
      ...salty,
      factor: { ...salty.factor, acts: { on: 'salt' as const, ingredientId: 'salt' } },
    }
    expect(itemOf(itemsOf(salt), 'bake-ends')).toBeUndefined()
  })

  it('an enriched dough is done sooner (82 to 91 °C in bakers’ pages)', () => {
    const butter = { id: 'b', name: 'Butter', kind: 'fat' as const, percent: 20, waterPercent: 16 }
    expect(doneCoreCelsius({ ingredients: [butter] })).toBeGreaterThanOrEqual(82)
    expect(doneCoreCelsius({ ingredients: [butter] })).toBeLessThanOrEqual(91)
  })

  it('an oven that changes its temperature takes time, and that is said', () => {
    const item = itemOf(itemsOf(hot()), 'oven-change')
    expect(item?.amount?.value).toBe(60)
    expect(item?.remedies).toEqual([{ code: 'bake-in-blocks' }])
  })
})

describe('equal folds or equal strength', () => {
  const fold = { ...madeStep('fold', 'fold'), repeats: 3 }

  it('is asked where the factor changes the strength, and one press ends the folds by the window pane', () => {
    const plan = waterPlanOf({ steps: [fold, bake] })
    const item = itemOf(itemsOf(plan), 'fold-strength')
    expect([item?.severity, item?.data.by]).toEqual(['know', 'count'])
    const [remedy] = item?.remedies ?? []
    if (!remedy) throw new Error('no remedy')
    const mended = itemOf(itemsOf(applyRemedy(plan, remedy)), 'fold-strength')
    expect(mended?.data.by).toBe('strength')
    expect(itemOf(itemsOf(waterPlanOf({ steps: [bake] })), 'fold-strength')).toBeUndefined()
  })
})

describe('flour shares at one water', () => {
  const plan = waterPlanOf()
  const shares: Plan = {
    ...plan,
    factor: {
      ...plan.factor,
      acts: { on: 'flour-share', ingredientId: 'rye', fromIngredientId: 'flour' },
    },
    formula: {
      ...plan.formula,
      ingredients: [
        { id: 'flour', name: 'White', kind: 'flour', percent: 100, flourLotId: 'white' },
        { id: 'rye', name: 'Wholemeal', kind: 'flour', percent: 0, flourLotId: 'whole' },
        { id: 'water', name: 'Water', kind: 'water', percent: 65 },
      ],
    },
    levels: [0, 40].map((value) => ({
      ...{ id: `l${value}`, value, label: String(value), control: value === 0 },
    })),
  }
  const lots = [
    ...kitchen,
    { id: 'white', kind: 'flour' as const, name: 'White', lot: 'a', absorptionPercent: 60 },
    { id: 'whole', kind: 'flour' as const, name: 'Wholemeal', lot: 'b', absorptionPercent: 70 },
  ]

  it('says how much more the share with bran would want: 0.5 to 2 points a tenth of the flour', () => {
    const item = itemOf(itemsOf(shares), 'flour-water')
    expect(item?.data).toEqual({ leastPoints: 2, mostPoints: 8, known: false, own: false })
    // from the middle of that: 40 × 0.125
    expect(item?.remedies[0]).toEqual({
      code: 'own-waters',
      waters: [
        { levelId: 'l0', percent: 65 },
        { levelId: 'l40', percent: 70 },
      ],
    })
  })

  it('goes by what the lots take, and one press gives each level its own water', () => {
    const items = itemsOf(shares, { kitchen: lots })
    const item = itemOf(items, 'flour-water')
    if (!item) throw new Error('no item')
    // 40 of 100 of the flour take 70 in place of 60: 4 points
    expect(item.data).toEqual({ leastPoints: 4, mostPoints: 4, known: true, own: false })
    expect(fairnessText(item, shares).sentence).toContain('the last share wants 4.0 points more')
    const [remedy] = item.remedies
    if (!remedy) throw new Error('no remedy')
    expect(remedyText(remedy, shares)).toBe(
      'Give each level its own water: 65 % at 0 % and 69 % at 40 %',
    )
    const mended = applyRemedy(shares, remedy)
    const waters = plannedBatches(mended).map((one) => one.ok && hydrationPercent(one.formula))
    expect(waters[0]).toBeCloseTo(65, 9)
    expect(waters[1]).toBeCloseTo(69, 9)
    const after = itemsOf(mended, { kitchen: lots })
    expect(itemOf(after, 'flour-water')).toMatchObject({ severity: 'fine', data: { own: true } })
    // nobody asked for the water that rides along; here somebody did
    expect(itemOf(after, 'water-rides')).toBeUndefined()
  })
})

describe('one stock a stage', () => {
  it('a stock for the poolish and the dough is made apart, so it is fine', () => {
    const plan = waterPlanOf()
    const staged: Plan = {
      ...plan,
      formula: {
        ...plan.formula,
        ingredients: [
          ...plan.formula.ingredients,
          { id: 'yeast', name: 'Yeast', kind: 'yeast', percent: 0.5, yeastForm: 'instant' },
        ],
        preferments: [
          {
            ...{ id: 'p', name: 'Poolish', kind: 'poolish', flourSharePercent: 20 },
            parts: [
              { ingredientId: 'flour', percent: 100 },
              { ingredientId: 'water', percent: 100 },
              { ingredientId: 'yeast', percent: 0.1 },
            ],
          },
        ],
      },
      sharedDoses: [{ ingredientId: 'yeast', by: 'stock' }],
    }
    const item = itemOf(itemsOf(staged), 'stock-stages')
    expect(item?.severity).toBe('fine')
    const mixed: Plan = { ...staged, sharedDoses: [{ ingredientId: 'yeast', by: 'dry-mix' }] }
    expect(itemOf(itemsOf(mixed), 'stock-stages')).toBeUndefined()
  })
})
