import { wayToOvenSeconds } from '@/core/clock-plan/way-to-oven.ts'
import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import { mixedApart } from '@/core/trial/doughs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { starterTrap } from '@/core/trial/starter-trap.ts'
import { endsOf } from './ends-of.ts'
import { madeItem } from './made-item.ts'

const timeFactors: readonly Plan['factor']['acts']['on'][] = [
  'rest-time',
  'proof-time',
  'cold-hours',
]

/**
 * Steps that differ between levels although time is not the factor: a fold more, an autolyse left out. Size: minutes that the
 * levels' ways from mix to oven lie apart.
 */
export function stepItems(plan: Plan): FairnessItem[] {
  const { acts } = plan.factor
  if (timeFactors.includes(acts.on) || acts.on === 'bake-time') return []
  const perLevel = plan.levels.map((level) => ({
    levelId: level.id,
    value: wayToOvenSeconds(plan, level) / 60,
  }))
  const ends = endsOf(perLevel.map(({ value }) => value))
  if (!ends || ends.high === ends.low) return []
  return [
    madeItem('steps-differ', {
      ...{ size: ends.high - ends.low, data: ends, perLevel, path: '/steps' },
      remedies: [{ code: 'follow-clock-plan' }],
    }),
  ]
}

/**
 * One dough or several, for a factor that acts after the mix: one dough removes what makes batches differ, but its pieces are
 * baked apart when the factor is a time; mixed apart the doughs are baked together and carry all that batches differ in.
 */
export function doughItems(plan: Plan): FairnessItem[] {
  if (plan.factor.splitsAt === 'mix') return []
  const time = timeFactors.includes(plan.factor.acts.on)
  const one = plan.doughs === 'one'
  const size = one && !time ? 0 : 1
  const remedies = [one ? { code: 'mix-apart' as const } : { code: 'one-dough' as const }]
  const data = { doughs: plan.doughs, time }
  return [madeItem('doughs', { size, counts: false, data, remedies, path: '/doughs' })]
}

/**
 * More starter pulls a dough towards the starter's own hydration: how far at the worst level, and what the weigh sheet takes
 * off for it. Said as fine, since the weights carry it.
 */
export function starterItems(plan: Plan): FairnessItem[] {
  const [worst] = starterTrap(plan).toSorted(
    (a, b) => Math.abs(b.offPoints) - Math.abs(a.offPoints),
  )
  if (!worst || Math.abs(worst.offPoints) < 0.05) return []
  const { levelId, lessFlourGrams, lessWaterGrams } = worst
  const data = { levelId, lessFlourGrams, lessWaterGrams }
  const size = Math.abs(worst.offPoints)
  return [madeItem('starter-corrected', { size, data, path: '/formula/preferments' })]
}

const alive: readonly string[] = ['poolish', 'biga', 'sponge', 'starter']

/** Minutes by which a starter or a yeast stock is older at the last mix than at the first, by the hands that each mix takes. */
export function waitingItems(plan: Plan): FairnessItem[] {
  if (!mixedApart(plan)) return []
  const mix = plan.steps.find(({ kind }) => kind === 'mix')
  const handsSeconds = mix && mix.once !== true ? mix.handsSeconds : 0
  const minutes = (handsSeconds * Math.max(0, plan.levels.length - 1)) / 60
  if (minutes === 0) return []
  const remedies = [{ code: 'reverses-itself' as const }]
  const starters = plan.formula.preferments.flatMap(({ id, name, kind }, at) =>
    alive.includes(kind)
      ? [
          madeItem('starter-age', {
            ...{ size: minutes, data: { name }, subject: id, remedies },
            path: `/formula/preferments/${at}`,
          }),
        ]
      : [],
  )
  const stocks = plan.sharedDoses.flatMap(({ ingredientId, by }, at) =>
    by === 'stock'
      ? [
          madeItem('stock-age', {
            ...{ size: minutes, data: { ingredientId }, subject: ingredientId },
            ...{ remedies: [{ code: 'dose-at-once' as const }], path: `/sharedDoses/${at}` },
          }),
        ]
      : [],
  )
  return [...starters, ...stocks]
}
