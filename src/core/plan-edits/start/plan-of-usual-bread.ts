import type { Formula, Ingredient } from '@/core/formula/formula-record.ts'
import { waterContentOf } from '@/core/formula/water-contents.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { planAround } from './plan-around.ts'
import type { UsualBread } from './usual-breads.ts'

/** A starting plan around a usual bread: its formula, its method, how it is served; the rest as it was. */
export function planOfUsualBread(plan: Plan, bread: UsualBread, newId: () => string): Plan {
  const { name, steps } = bread
  const formula = formulaOfUsualBread(bread, newId)
  const around = planAround(
    { ...plan, serving: bread.serving },
    { name, formula, steps, temperature: null },
    newId,
  )
  return { ...around, warmUpPiece: bread.serving === 'as-baked' }
}

/** Its formula as a record; the water in egg, butter and the like as the core knows it. */
export function formulaOfUsualBread(bread: UsualBread, newId: () => string): Formula {
  const ingredients = bread.lines.map((line): Ingredient => {
    const holds = line.kind === 'flour' || line.kind === 'water' ? null : waterContentOf(line.name)
    return {
      ...{ id: newId(), ...line },
      ...(line.kind === 'yeast' ? { yeastForm: 'instant' } : {}),
      ...(holds ? { waterPercent: holds.waterPercent } : {}),
    }
  })
  const [flour] = ingredients
  const water = ingredients.find(({ kind }) => kind === 'water')
  const ahead: Formula['preferments'] =
    bread.levainPercent !== undefined && flour && water
      ? [
          {
            ...{ id: newId(), name: 'Levain', kind: 'starter' },
            flourSharePercent: bread.levainPercent,
            parts: [flour, water].map(({ id }) => ({ ingredientId: id, percent: 100 })),
          },
        ]
      : []
  return { ingredients, preferments: ahead, batchSize: bread.batchSize }
}
