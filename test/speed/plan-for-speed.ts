import type { Ingredient } from '@/core/formula/formula-record.ts'
import type { Scale } from '@/core/kitchen/kitchen-record.ts'
import { startingPlan } from '@/core/plan-edits/start/starting-plan.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

const scaleOf = (id: string, resolutionGrams: number, capacityGrams: number): Scale => ({
  ...{ id, kind: 'scale', name: id, resolutionGrams, capacityGrams },
})

/** The largest plan the page promises to follow live: 8 levels × 16 ingredients with a poolish, a stock, three scales, eight tasters. */
export function planForSpeed(): { plan: Plan; kitchen: Scale[] } {
  let count = 0
  const start = startingPlan({ newId: () => `id${++count}`, at: 0, zone: 'UTC' })
  const [flour, water] = start.formula.ingredients
  const yeast = start.formula.ingredients.find(({ kind }) => kind === 'yeast')
  if (!flour || !water || !yeast) throw new Error('the starting plan has flour, water and yeast')
  const seeds = Array.from({ length: 12 }, (_, index): Ingredient => {
    return { id: `seed${index}`, name: `seed ${index}`, kind: 'other', percent: 1 }
  })
  const kitchen = [scaleOf('bench', 1, 5000), scaleOf('fine', 0.1, 500), scaleOf('gem', 0.01, 100)]
  const plan: Plan = {
    ...start,
    formula: {
      ...start.formula,
      ingredients: [...start.formula.ingredients, ...seeds],
      preferments: [
        {
          ...{ id: 'poolish', name: 'Poolish', kind: 'poolish', flourSharePercent: 20 },
          parts: [flour, water].map(({ id }) => ({ ingredientId: id, percent: 100 })),
        },
      ],
    },
    levels: [60, 62, 64, 66, 68, 70, 72, 74].map((value) => ({
      ...{ id: `level${value}`, value, label: String(value), control: value === 66 },
    })),
    tasters: Array.from({ length: 8 }, (_, at) => ({ tasterId: `taster${at}`, knows: false })),
    sharedDoses: [{ ingredientId: yeast.id, by: 'stock' }],
    kitchenIds: kitchen.map(({ id }) => id),
  }
  return { plan, kitchen }
}
