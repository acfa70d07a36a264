import { restInMixSeconds } from '@/core/dough-temperature/autolyse-of-plan.ts'
import type { LearnedWork } from '@/core/dough-temperature/learn-mixing-work.ts'
import { plannedMixes } from '@/core/dough-temperature/planned-mixes.ts'
import { beforeRest } from '@/core/dough-temperature/rested.ts'
import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import { formulaViews } from '@/core/formula/formula-views.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { hasOwnWater } from '@/core/plan-edits/levels/own-water.ts'
import { shareWaters } from '@/core/plan-edits/levels/share-waters.ts'
import { mixedApart } from '@/core/trial/doughs.ts'
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

/**
 * Flour shares at one water: flours drink differently, wholemeal most, or as the lots' own figures say. Size: points of flour share that
 * the levels lie apart; none where each level has its own water.
 */
export function flourShareItems(plan: Plan, kitchen: readonly KitchenThing[]): FairnessItem[] {
  const ends = endsOf(plan.levels.flatMap(({ value }) => (value === null ? [] : [value])))
  const asked = shareWaters(plan, kitchen)
  if (!ends || !asked) return []
  const { leastPoints, mostPoints, known, waters } = asked
  const own = hasOwnWater(plan)
  const data = { leastPoints, mostPoints, known, own }
  return [
    madeItem('flour-water', {
      ...{ size: own ? 0 : ends.high - ends.low, counts: false, data, path: '/levels' },
      remedies: [{ code: 'own-waters', waters }, { code: 'own-water-by-trying' }],
    }),
  ]
}

/**
 * Wetted flour that stands before its mix ends, at an autolyse or between two mixes: how far that brings the dough to the room, most of all
 * levels. Fine where each batch has its own water, which reckons with it.
 */
export function restInMixItems(
  plan: Plan,
  kitchen: readonly KitchenThing[],
  learned: LearnedWork | null,
): FairnessItem[] {
  const { temperature } = plan
  const mixes = plannedMixes(plan, kitchen, learned)
  const minutes = endsOf(mixes.map(({ level }) => restInMixSeconds(plan, level) / 60))
  if (!temperature || !minutes || minutes.high <= 0) return []
  const { roomCelsius, wantedDoughCelsius: wanted, matched } = temperature
  const drifts = mixes.map(({ restShare }) => wanted - beforeRest(wanted, roomCelsius, restShare))
  const driftCelsius = drifts.toSorted((a, b) => Math.abs(b) - Math.abs(a))[0] ?? 0
  const carried = matched || !mixedApart(plan)
  return [
    madeItem('rest-in-mix', {
      size: carried ? 0 : Math.abs(driftCelsius),
      data: { ...minutes, driftCelsius, roomCelsius, carried },
      ...{ counts: false, path: '/temperature' },
      remedies: [{ code: 'match-water' }, { code: 'rest-covered' }],
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
