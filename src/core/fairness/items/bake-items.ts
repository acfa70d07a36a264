import type { FairnessData } from '@/core/fairness/fairness-data.ts'
import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import type { Formula } from '@/core/formula/formula-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { apartPercent, endsOf } from './ends-of.ts'
import { madeItem } from './made-item.ts'

/** Factors under which pieces bake through at other minutes: the water in them, their mass, the oven. */
const of: Partial<Record<Plan['factor']['acts']['on'], FairnessData['bake-ends']['of']>> = {
  hydration: 'water',
  'piece-mass': 'mass',
  'bake-temperature': 'temperature',
}

/** Fat and egg from this share of the flour on make a dough enriched, %: common practice. */
const enrichedPercent = 8

/**
 * Core temperature that a bake may end by, °C: lean doughs 93 to 98 (96 taken), enriched ones 82 to 91 (88 taken); seen in
 * several bakers' pages, which disagree by 3 °C.
 */
export function doneCoreCelsius({ ingredients }: Pick<Formula, 'ingredients'>): number {
  const rich = ingredients
    .filter(({ kind }) => kind === 'fat' || kind === 'liquid')
    .reduce((sum, { percent, waterPercent = 0 }) => sum + percent * (1 - waterPercent / 100), 0)
  return rich >= enrichedPercent ? 88 : 96
}

/**
 * Bake by the clock or by the crumb: where water, mass or the oven's temperature differ, equal minutes leave one level less
 * baked than another. Size: percent that the levels lie apart; of bake temperatures the degrees count like percents.
 */
export function bakeItems(plan: Plan): FairnessItem[] {
  const { acts } = plan.factor
  const what = of[acts.on]
  const step = plan.steps.find(({ kind }) => kind === 'bake')
  const ends = endsOf(plan.levels.flatMap(({ value }) => (value === null ? [] : [value])))
  if (!what || !step || !ends || ends.high === ends.low) return []
  const { low, high } = ends
  const { endsBy } = step
  const by =
    endsBy.by === 'clock'
      ? ('clock' as const)
      : endsBy.by === 'mark'
        ? ('mark' as const)
        : ('core' as const)
  const size = by === 'clock' ? (what === 'temperature' ? high - low : apartPercent(ends)) : 0
  const at = plan.steps.indexOf(step)
  const celsius = doneCoreCelsius(plan.formula)
  const items: FairnessItem[] = [
    madeItem('bake-ends', {
      ...{ size, counts: by === 'clock' && what !== 'temperature' },
      data: { of: what, by, minutes: step.waitSeconds / 60, low, high },
      remedies: [
        { code: 'end-by-core', stepId: step.id, celsius },
        { code: 'end-by-loss', stepId: step.id },
        { code: 'end-by-colour', stepId: step.id },
        { code: 'weigh-bake-loss' },
      ],
      path: `/steps/${at}/endsBy`,
    }),
  ]
  if (what === 'temperature')
    items.push(
      madeItem('oven-change', {
        ...{ size: high - low, data: { low, high }, path: '/levels' },
        remedies: [{ code: 'bake-in-blocks' }],
      }),
    )
  return items
}
