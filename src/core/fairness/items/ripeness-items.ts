import type { FairnessData } from '@/core/fairness/fairness-data.ts'
import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Step } from '@/core/trial/step.ts'
import { apartPercent, endsOf } from './ends-of.ts'
import { madeItem } from './made-item.ts'

const ferments: readonly Step['kind'][] = ['rest', 'proof', 'cold-proof']

/** Which end of the levels ripens first: more water, yeast, preferment hurries a dough, more salt holds it back. */
const quickerEnd: Partial<
  Record<Plan['factor']['acts']['on'], FairnessData['ripeness']['quicker']>
> = {
  hydration: 'high',
  yeast: 'high',
  'preferment-share': 'high',
  salt: 'low',
  'flour-share': 'unknown',
  ingredient: 'unknown',
  choice: 'unknown',
}

/** A choice, and a flour, has no strength to be counted: taken as a difference to be known. */
const uncountedPercent = 5

/**
 * Clock or ripeness: where the factor changes the speed of fermentation and proofs end by the clock, ripeness rides along, by
 * direction only; ended by a mark, time does, and that is the smaller evil. Size: how far the levels lie apart in percent of
 * their middle.
 */
export function ripenessItems(plan: Plan): FairnessItem[] {
  const quicker = quickerEnd[plan.factor.acts.on]
  if (!quicker || (plan.factor.acts.on === 'choice' && !changesDough(plan))) return []
  const steps = plan.steps.filter(
    ({ kind, waitSeconds }) => ferments.includes(kind) && waitSeconds > 0,
  )
  if (steps.length === 0) return []
  const proofs = steps.filter(({ kind }) => kind !== 'rest')
  const judged = proofs.length > 0 ? proofs : steps
  const byClock = judged.filter(({ endsBy }) => endsBy.by === 'clock')
  const endsBy = byClock.length > 0 ? ('clock' as const) : ('mark' as const)
  const ends = endsOf(plan.levels.flatMap(({ value }) => (value === null ? [] : [value])))
  const counted = ends !== null && quicker !== 'unknown'
  const size = endsBy === 'mark' ? 0 : counted ? apartPercent(ends) : uncountedPercent
  const stepIds = byClock.map(({ id }) => id)
  const at = plan.steps.findIndex(({ id }) => id === stepIds[0])
  return [
    madeItem('ripeness', {
      ...{ size, counts: counted && endsBy === 'clock', data: { endsBy, quicker, stepIds } },
      remedies: [{ code: 'end-by-mark', stepIds }],
      path: at < 0 ? '/steps' : `/steps/${at}/endsBy`,
    }),
  ]
}

function changesDough({ levels }: Plan): boolean {
  return levels.some(({ changes }) =>
    changes?.some(({ what }) => what === 'ingredient' || what === 'hydration'),
  )
}
