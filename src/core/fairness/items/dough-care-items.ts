import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import { formulaViews } from '@/core/formula/formula-views.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { plannedBatches } from '@/core/trial/planned-batches.ts'
import { endsOf } from './ends-of.ts'
import { madeItem } from './made-item.ts'

/** Factors that change how strong a dough is after as many folds. */
const strengthens: readonly Plan['factor']['acts']['on'][] = [
  'hydration',
  'salt',
  'flour-share',
  'preferment-share',
]

/**
 * Equal folds or equal strength: as many folds for all leave a wet dough slacker than a dry one; folded until the window pane,
 * the number of folds is a result, which is the smaller evil.
 */
export function foldItems(plan: Plan): FairnessItem[] {
  const folds = plan.steps.filter(({ kind }) => kind === 'fold')
  if (folds.length === 0 || !strengthens.includes(plan.factor.acts.on)) return []
  const byClock = folds.filter(({ endsBy }) => endsBy.by === 'clock')
  const stepIds = byClock.map(({ id }) => id)
  const by = byClock.length > 0 ? ('count' as const) : ('strength' as const)
  return [
    madeItem('fold-strength', {
      ...{ size: by === 'count' ? 1 : 0, counts: false, data: { by }, path: '/steps' },
      remedies: by === 'count' ? [{ code: 'end-by-windowpane', stepIds }] : [],
    }),
  ]
}

/** Flour shares at one water: flours drink differently, wholemeal most. Size: points of flour share that the levels lie apart. */
export function flourShareItems(plan: Plan): FairnessItem[] {
  const ends = endsOf(plan.levels.flatMap(({ value }) => (value === null ? [] : [value])))
  if (plan.factor.acts.on !== 'flour-share' || !ends) return []
  const { low, high } = ends
  const data = { leastPoints: ((high - low) / 10) * 0.5, mostPoints: ((high - low) / 10) * 2 }
  return [
    madeItem('flour-water', {
      ...{ size: high - low, counts: false, data, path: '/levels' },
      remedies: [{ code: 'own-water-by-trying' }],
    }),
  ]
}

/**
 * Water in two additions: each water of the formula beside the largest, with its grams in a batch and its temperature. Fine
 * where the temperature is said, since the weights and the heat balance then carry it.
 */
export function secondWaterItems(plan: Plan): FairnessItem[] {
  const waters = plan.formula.ingredients.filter(({ kind }) => kind === 'water')
  const [, ...later] = waters.toSorted((a, b) => b.percent - a.percent)
  const doughs = plannedBatches(plan).flatMap((one) => (one.ok ? [formulaViews(one.formula)] : []))
  return later.flatMap(({ id, name, celsius = null }): FairnessItem[] => {
    const grams = doughs.flatMap(({ finalDough }) =>
      finalDough.rows.flatMap((row) => (row.ingredientId === id ? [row.grams] : [])),
    )
    const ends = endsOf(grams)
    if (!ends || ends.high <= 0) return []
    const at = plan.formula.ingredients.findIndex((one) => one.id === id)
    return [
      madeItem('second-water', {
        ...{ size: celsius === null ? 1 : 0, counts: false, data: { name, celsius, ...ends } },
        ...{ subject: id, path: `/formula/ingredients/${at}` },
        remedies: [{ code: 'temper-second-water' }],
      }),
    ]
  })
}

/** A stock for a preferment and for the dough hours later: fine, since the weigh sheet makes one apart for each stage. */
export function stockItems(plan: Plan): FairnessItem[] {
  const { rows } = formulaViews(plan.formula).finalDough
  return plan.sharedDoses.flatMap(({ ingredientId, by }, at): FairnessItem[] => {
    const ahead = plan.formula.preferments.find(({ parts }) =>
      parts.some((part) => part.ingredientId === ingredientId && part.percent > 0),
    )
    const inDough = rows.some((row) => row.ingredientId === ingredientId && row.grams > 0.001)
    if (by !== 'stock' || !ahead || !inDough) return []
    return [
      madeItem('stock-stages', {
        ...{ size: 0, counts: false, data: { ingredientId, preferment: ahead.name } },
        ...{ subject: ingredientId, path: `/sharedDoses/${at}` },
      }),
    ]
  })
}
